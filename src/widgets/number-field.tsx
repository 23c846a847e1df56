import { useLayoutEffect, useRef } from 'preact/hooks';
import { isBegun } from '../entry/begun';
import type { Problem } from '../entry/problems';
import { FieldMessage } from './field-message';
import { keyAsks } from './gauge-cable';
import { comeBackIfMarked, goToNext, hasOwnKeypad, idOf } from './number-fields';
import { useTyping } from './typing';

export interface NumberFieldProps {
  /** The key that the field's problem goes by; it also names the field in the page. */
  readonly field: string;
  readonly label: string;
  readonly text: string;
  readonly unit?: string;
  /** True where the unit may be typed too. */
  readonly isLength?: boolean;
  /** True where it has been: that of the field then says nothing, and takes the room. */
  readonly ownUnit?: boolean;
  readonly problem?: Problem | undefined;
  /** What stands beside it, to be compared with. */
  readonly note?: string | undefined;
  /** What a text that is more than a number is read as. */
  readonly readAs?: string | undefined;
  readonly placeholder?: string;
  readonly disabled?: boolean;
  /** Larger digits, for what is read off an instrument. */
  readonly reading?: boolean;
  /** Takes a whole row where fields stand in columns. */
  readonly wide?: boolean;
  /**
   * Left empty it has a meaning of its own, so that going on to the next field passes it by; where it
   * is 'asked' all the same, that stops at it once on the way.
   */
  readonly optional?: boolean | 'asked';
  readonly onText: (text: string) => void;
  readonly onFocus?: () => void;
}

function numberKind({ optional = false }: NumberFieldProps): 'needed' | 'optional' | 'asked' {
  return optional === true ? 'optional' : optional || 'needed';
}

/** A field for a number, with its unit and what is wrong with it. Enter goes on to the next one. */
export function NumberField(props: NumberFieldProps) {
  const { field, label, text, unit, problem, readAs, note } = props;
  const typing = useTyping(text);
  const id = idOf(field);
  const input = useRef<HTMLInputElement>(null);
  const isWrong = problem?.kind === 'wrong';
  useLayoutEffect(() => {
    if (isWrong && input.current !== null) comeBackIfMarked(input.current);
  }, [isWrong]);
  return (
    <div class={classOf(props)}>
      <label for={id}>{label}</label>
      <div class="field-box">
        <input
          ref={input}
          id={id}
          type="text"
          data-number={numberKind(props)}
          data-kind={field.split(' ')[0]}
          data-unit={props.isLength ? unit : undefined}
          inputMode={hasOwnKeypad() ? 'none' : 'decimal'}
          autocomplete="off"
          enterkeyhint="next"
          value={typing.text}
          placeholder={props.placeholder ?? ''}
          disabled={props.disabled ?? false}
          aria-invalid={isWrong}
          aria-describedby={describedBy(id, props)}
          onInput={(event) => {
            typing.note(event.currentTarget.value);
            props.onText(event.currentTarget.value);
          }}
          onFocus={props.onFocus}
          onKeyDown={(event) => {
            const asked = keyAsks(event);
            if (asked !== 'the usual') event.preventDefault();
            if (asked === 'to go on') goToNext(event.currentTarget);
          }}
        />
        {unit !== undefined && !props.ownUnit && <span class="field-unit">{unit}</span>}
      </div>
      {note !== undefined && (
        <p id={`${id}-note`} class="field-note">
          {note}
        </p>
      )}
      {readAs !== undefined && (
        <p id={`${id}-read-as`} class="field-read-as">
          {readAs}
        </p>
      )}
      <FieldMessage id={`${id}-message`} problem={problem} />
    </div>
  );
}

/** More characters than this stand in a reading's large figures only where they are cut off. */
const LARGE = 6;

function classOf({ reading, wide, text, problem }: NumberFieldProps): string {
  const long = reading && !wide && text.length > LARGE;
  const begun = problem?.kind === 'wrong' && isBegun(text);
  return [
    'field',
    reading && 'field-reading',
    long && 'field-long',
    wide && 'across-all',
    begun && 'field-begun',
  ]
    .filter(Boolean)
    .join(' ');
}

/** What stands under the field tells more of it. */
function describedBy(id: string, { problem, readAs, note }: NumberFieldProps): string | undefined {
  const told = [readAs && `${id}-read-as`, problem && `${id}-message`, note && `${id}-note`].filter(
    Boolean,
  );
  return told.length === 0 ? undefined : told.join(' ');
}
