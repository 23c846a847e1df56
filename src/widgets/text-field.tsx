import type { Problem } from '../entry/problems';
import { FieldMessage } from './field-message';
import { goOnAfter } from './going-on';

interface TextFieldProps {
  readonly id: string;
  readonly label: string;
  readonly text: string;
  readonly problem?: Problem | undefined;
  readonly placeholder?: string;
  /** Words to choose from; anything else may be typed too. */
  readonly suggestions?: readonly string[];
  readonly onText: (text: string) => void;
}

/** A field for words. Enter goes on to the next field, or sends the form that it stands in. */
export function TextField(props: TextFieldProps) {
  const { id, label, text, problem, suggestions } = props;
  return (
    <div class="field field-text">
      <label for={id}>{label}</label>
      <div class="field-box">
        <input
          id={id}
          type="text"
          autocomplete="off"
          value={text}
          placeholder={props.placeholder ?? ''}
          list={suggestions && `${id}-list`}
          aria-describedby={problem === undefined ? undefined : `${id}-message`}
          onInput={(event) => props.onText(event.currentTarget.value)}
          enterkeyhint="next"
          onKeyDown={(event) => {
            const { key, isComposing, currentTarget: field } = event;
            if (key !== 'Enter' || isComposing || field.form !== null) return;
            // The button that it may lead to is not to take this key for its own.
            event.preventDefault();
            goOnAfter(field);
          }}
        />
      </div>
      {suggestions && (
        <datalist id={`${id}-list`}>
          {suggestions.map((word) => (
            <option key={word} value={word} />
          ))}
        </datalist>
      )}
      <FieldMessage id={`${id}-message`} problem={problem} />
    </div>
  );
}
