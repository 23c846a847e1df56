import { useState } from 'preact/hooks';
import { type Face, oppositeFace } from '../../core/part/faces';
import { fieldKey } from '../../entry/field-keys';
import { baseOf, isFourSided, placingMeant } from '../../entry/four-sides';
import { seatAgain, withoutReadings, withReading } from '../../entry/placings';
import { readingNames } from '../../entry/reading-names';
import type { NoseComparatorSetup } from '../../entry/setup-entry';
import { isBlank } from '../../entry/typed-length';
import { newId } from '../../state/shop';
import { LengthField } from '../../widgets/length-field';
import { goToField } from '../../widgets/number-fields';
import { pairName } from '../../words/faces';
import { FourSidesButton } from './four-sides-button';
import { ReadWith, ReadWithFirst } from './read-with';
import { ReadingField } from './reading-field';
import { SeatingButtons } from './seating-buttons';
import { type SetupSheetProps, SheetFrame } from './setup-sheet';
import { StandingBlock } from './standing-block';

/** One setting of the nose comparator: its two heights, and what it shows on each side. */
export function NoseComparatorSheet(props: SetupSheetProps<NoseComparatorSetup>) {
  const { setup, part, problems, before, sides, locked, onChange, onRemove } = props;
  const { id, faces, base, noseHeight, indicatorHeight, placings } = setup;
  const [activeId, setActive] = useState(placings[0]?.id);
  const active = placings.find((placing) => placing.id === activeId) ?? placings[0];
  const [moved, setMoved] = useState(false);
  const anyRead = placings.some(({ reading }) => !isBlank(reading));
  const put = (change: (now: NoseComparatorSetup) => NoseComparatorSetup) => {
    setMoved(false);
    onChange(change);
  };
  const setHeight = (
    change: Partial<Pick<NoseComparatorSetup, 'noseHeight' | 'indicatorHeight'>>,
  ) => {
    setMoved(anyRead);
    onChange((now) => ({ ...now, ...change }));
  };
  const fourSided = isFourSided(setup);
  const names = readingNames([setup]);
  const stand = active === undefined ? base : baseOf(setup, active);
  const read: Face = active?.face ?? faces[0];
  return (
    <SheetFrame
      title={`Nose comparator: ${fourSided ? 'all four sides' : pairName(faces)}`}
      subtitle={
        fourSided
          ? 'Turn the block on each side in turn and read the next one, the setting untouched: the four corners must sum to 360°.'
          : `Part standing on its ${base}. Read one side, swing round, read the other: the setting untouched.`
      }
      help={fourSided ? 'four sides' : 'nose comparator'}
      locked={locked}
      onRemove={onRemove}
    >
      <StandingBlock
        part={part}
        faces={[read, oppositeFace(read)]}
        base={stand}
        sides={stand === base && faces.includes(read) ? sides : undefined}
        instrument={{
          kind: 'nose comparator',
          face: read,
          nose: noseHeight,
          heights: [indicatorHeight],
          active: 0,
          onPick: (face) => {
            const picked = placingMeant(setup, { face, stand }, ({ reading }) => isBlank(reading));
            if (picked !== undefined) goToField(fieldKey.placing(picked.id));
          },
        }}
      />
      <div class="columns">
        <LengthField
          field={fieldKey.noseHeight(id)}
          label="Nose height"
          typed={noseHeight}
          problems={problems}
          disabled={locked}
          onTyped={(noseHeight) => setHeight({ noseHeight })}
        />
        <LengthField
          field={fieldKey.indicatorHeight(id)}
          label="Indicator height"
          typed={indicatorHeight}
          problems={problems}
          disabled={locked}
          onTyped={(indicatorHeight) => setHeight({ indicatorHeight })}
        />
      </div>
      {/* Over the keypad while the first field is typed into: who has no comparator need not look for it. */}
      {props.instead}
      <ReadWithFirst {...props} />
      <div class="columns">
        {placings.map((placing) => (
          <ReadingField
            key={placing.id}
            before={before}
            field={fieldKey.placing(placing.id)}
            label={names.get(placing.id) ?? ''}
            typed={placing.reading}
            problems={problems}
            disabled={locked}
            onFocus={() => setActive(placing.id)}
            onTyped={({ text }) => put((now) => withReading(now, placing.id, text))}
          />
        ))}
      </div>
      {props.beside}
      {moved && anyRead && (
        <div class="note note-warning" role="status">
          <p>
            The readings stand as they are. If you have moved the comparator since, they are of
            another setting: read again.
          </p>
          <button type="button" class="button" onClick={() => put(withoutReadings)}>
            Clear these readings
          </button>
        </div>
      )}
      {!locked && active !== undefined && (
        <div class="row">
          <SeatingButtons
            setup={setup}
            placing={active}
            again={(now, placing) => seatAgain(now, placing, newId)}
            onChange={onChange}
          />
          <FourSidesButton setup={setup} block={part.block} onChange={onChange} />
        </div>
      )}
      <ReadWith {...props} />
    </SheetFrame>
  );
}
