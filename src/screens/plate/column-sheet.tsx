import { useState } from 'preact/hooks';
import { type Face, oppositeFace } from '../../core/part/faces';
import { addHeight, removeHeight, withHeight } from '../../entry/column-heights';
import { fieldKey } from '../../entry/field-keys';
import { baseOf, isFourSided, placingMeant } from '../../entry/four-sides';
import { traverseAgain, withTraverseReading } from '../../entry/placings';
import { heightName, traverseName } from '../../entry/reading-names';
import type { ColumnPlacing, ColumnSetup } from '../../entry/setup-entry';
import { blank, isBlank } from '../../entry/typed-length';
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

/** One column: the heights that the indicator slides to, and what it shows there on either side. */
export function ColumnSheet(props: SetupSheetProps<ColumnSetup>) {
  const { setup, part, problems, sides, locked, onChange, onRemove } = props;
  const { faces, base, heights, placings } = setup;
  const [active, setActive] = useState({ placing: placings[0]?.id, row: 0 });
  const placing = placings.find(({ id }) => id === active.placing) ?? placings[0];
  const fourSided = isFourSided(setup);
  const stand = placing === undefined ? base : baseOf(setup, placing);
  const read: Face = placing?.face ?? faces[0];
  return (
    <SheetFrame
      title={`Column: ${fourSided ? 'all four sides' : pairName(faces)}`}
      subtitle={
        fourSided
          ? 'Turn the block on each side in turn and slide the indicator up the next one: the four corners must sum to 360°.'
          : `Part standing on its ${base}. Slide the indicator up one side, turn the part round, up the other.`
      }
      help={fourSided ? 'four sides' : 'column'}
      locked={locked}
      onRemove={onRemove}
    >
      <StandingBlock
        part={part}
        faces={[read, oppositeFace(read)]}
        base={stand}
        sides={stand === base && faces.includes(read) ? sides : undefined}
        instrument={{
          kind: 'column',
          face: read,
          heights: heights.map(({ height }) => height),
          active: active.row,
          onPick: (face, row) => {
            const height = heights[row]?.id ?? '';
            const picked = placingMeant(setup, { face, stand }, ({ readings }) =>
              isBlank(readings[height] ?? blank('µm')),
            );
            if (picked !== undefined) goToField(fieldKey.traverse(picked.id, height));
          },
        }}
      />
      <div class="columns">
        {heights.map(({ id, height }, row) => (
          <LengthField
            key={id}
            field={fieldKey.height(id)}
            label={`Height ${row + 1} above the plate`}
            typed={height}
            problems={problems}
            disabled={locked}
            onTyped={(typed) => onChange((now) => withHeight(now, id, typed))}
          />
        ))}
      </div>
      {props.instead}
      {!locked && (
        <div class="row">
          <button
            type="button"
            class="button"
            onClick={() => onChange((now) => addHeight(now, newId))}
          >
            Add a height
          </button>
          {heights.length > 2 && (
            <button type="button" class="button" onClick={() => onChange(removeHeight)}>
              Remove the last
            </button>
          )}
          <FourSidesButton setup={setup} block={part.block} onChange={onChange} />
        </div>
      )}
      <ReadWithFirst {...props} />
      {placings.map((placing) => (
        <Traverse
          key={placing.id}
          {...props}
          placing={placing}
          onRow={(row) => setActive({ placing: placing.id, row })}
        />
      ))}
      <ReadWith {...props} />
    </SheetFrame>
  );
}

interface TraverseProps extends SetupSheetProps<ColumnSetup> {
  readonly placing: ColumnPlacing;
  readonly onRow: (row: number) => void;
}

/** The readings up one side. */
function Traverse({ setup, placing, problems, before, locked, onChange, onRow }: TraverseProps) {
  const put = (height: string, text: string) =>
    onChange((now) => withTraverseReading(now, { placing: placing.id, height }, text));
  const name = traverseName(setup, placing);
  const isLastOfItsSide =
    setup.placings.findLast(({ face, base }) => face === placing.face && base === placing.base) ===
    placing;
  return (
    <fieldset class="stack">
      <legend>{name}</legend>
      <div class="columns">
        {setup.heights.map(({ id }, row) => (
          <ReadingField
            key={id}
            before={before}
            field={fieldKey.traverse(placing.id, id)}
            label={`${name} at ${heightName(setup, row)}`}
            typed={placing.readings[id] ?? blank('µm')}
            problems={problems}
            disabled={locked}
            onFocus={() => onRow(row)}
            onTyped={({ text }) => put(id, text)}
          />
        ))}
      </div>
      {!locked && isLastOfItsSide && (
        <div class="row">
          <SeatingButtons
            setup={setup}
            placing={placing}
            again={(now, id) => traverseAgain(now, id, newId)}
            onChange={onChange}
          />
        </div>
      )}
    </fieldset>
  );
}
