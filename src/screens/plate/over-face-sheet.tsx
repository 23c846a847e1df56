import { useState } from 'preact/hooks';
import { oppositeFace } from '../../core/part/faces';
import { fieldKey } from '../../entry/field-keys';
import { withGrid } from '../../entry/grid';
import { placeEdges } from '../../entry/place-edges';
import { withoutPlace, withPlace } from '../../entry/places';
import type { OverFacePlace, OverFaceSetup } from '../../entry/setup-entry';
import { newId } from '../../state/shop';
import { entryUnits } from '../../state/shop-settings';
import { Fold } from '../../widgets/fold';
import { goToField } from '../../widgets/number-fields';
import { FacePlaces } from './face-places';
import { PlaceFields } from './place-fields';
import { ReadWith, ReadWithFirst } from './read-with';
import { ReadingField } from './reading-field';
import { type SetupSheetProps, SheetFrame } from './setup-sheet';

const GRIDS = [
  [2, 2],
  [3, 3],
  [4, 3],
  [5, 5],
] as const;

interface OverFaceSheetProps extends SetupSheetProps<OverFaceSetup> {
  /** Which seating of the block it is that is read so, counted from 1. */
  readonly seating: number;
  /** Has it read once more after lifting; none where that has been done. */
  readonly onAgain: (() => void) | undefined;
}

/** An indicator passed over a face: over the top for the thickness, or on jacks for the form alone. */
export function OverFaceSheet(props: OverFaceSheetProps) {
  const { setup, part, problems, before, seating, locked, onChange, onAgain, onRemove } = props;
  const { faces, places, kind } = setup;
  const [face] = faces;
  const edges = placeEdges(face, part.datum);
  const [active, setActive] = useState(0);
  const drawn = places.map((place) => ({ ...place, text: place.reading.text }));
  const anyPlaceWrong = places.some(
    ({ id }) => problems.has(fieldKey.up(id)) || problems.has(fieldKey.across(id)),
  );
  const put = (id: string, changed: Partial<OverFacePlace>) =>
    onChange((now) => withPlace(now, id, changed));
  const remove = (id: string) => onChange((now) => withoutPlace(now, id));
  const time = seating > 1 ? `, seating ${seating}` : '';
  return (
    <SheetFrame
      title={`${kind === 'over the top' ? 'Over' : 'Map of'} the ${face}${time}`}
      subtitle={
        kind === 'over the top'
          ? `Part standing on its ${oppositeFace(face)}, indicator on a stand passed over the ${face}.`
          : `Part on three jacks with its ${face} levelled: how flat it is, and nothing of its angles.`
      }
      help={kind}
      locked={locked}
      onRemove={onRemove}
    >
      {!locked && (
        <fieldset>
          <legend class="soft small">An even grid of places, columns × rows</legend>
          <div class="row">
            {GRIDS.map((grid, index) => (
              <button
                key={grid.join()}
                type="button"
                class="button"
                data-leads-on={index === 0 && places.length === 0 ? '' : undefined}
                disabled={places.some(({ reading }) => reading.text !== '')}
                onClick={() =>
                  onChange((now) => withGrid(now, part, grid, entryUnits.value, newId))
                }
              >
                {grid[0]} × {grid[1]}
              </button>
            ))}
          </div>
        </fieldset>
      )}
      <FacePlaces
        face={face}
        part={part}
        places={drawn}
        active={active}
        label={`Places of the indicator over the ${face}`}
        onPick={(index) => goToField(fieldKey.placing(places[index]?.id ?? ''))}
      />
      <ReadWithFirst {...props} />
      <div class="columns">
        {places.map((place, index) => (
          <ReadingField
            key={place.id}
            before={before}
            field={fieldKey.placing(place.id)}
            label={`Reading at place ${index + 1}${time}`}
            typed={place.reading}
            problems={problems}
            disabled={locked}
            onFocus={() => setActive(index)}
            onTyped={(typed) => put(place.id, { reading: typed })}
          />
        ))}
      </div>
      {!locked && onAgain !== undefined && places.length > 0 && (
        <button type="button" class="button" onClick={onAgain}>
          {kind === 'over the top' ? 'Seat' : 'Level'} again: {face}
        </button>
      )}
      {places.length > 0 && (
        <Fold open={anyPlaceWrong} summary="Where the places are">
          {places.map((place, index) => (
            <PlaceFields
              key={place.id}
              place={place}
              number={index + 1}
              edges={edges}
              stands={false}
              problems={problems}
              locked={locked}
              onChange={(changed) => put(place.id, changed)}
              onRemove={() => remove(place.id)}
              onFocus={() => setActive(index)}
            />
          ))}
        </Fold>
      )}
      <ReadWith {...props} />
    </SheetFrame>
  );
}
