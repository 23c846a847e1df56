import { useState } from 'preact/hooks';
import { depthBehind } from '../../core/part/block';
import { oppositeFace } from '../../core/part/faces';
import { fieldKey } from '../../entry/field-keys';
import { newPlace } from '../../entry/new-setup';
import { placeEdges } from '../../entry/place-edges';
import type { MicrometerPlace, MicrometerSetup } from '../../entry/setup-entry';
import { newId } from '../../state/shop';
import { Thicknesses } from '../../widgets/drawings/thicknesses';
import { NumberField } from '../../widgets/number-field';
import { pairName } from '../../words/faces';
import { placesOnFace } from './places-on-face';
import { type SetupSheetProps, SheetFrame } from './setup-sheet';

/** Thicknesses between the two faces, each with its place. */
export function MicrometerSheet(props: SetupSheetProps<MicrometerSetup>) {
  const { setup, part, locked, onChange, onRemove } = props;
  const { faces, places } = setup;
  const edges = placeEdges(faces[0], part.datum);
  const [active, setActive] = useState(0);
  const add = () => {
    const unit = places.at(-1)?.up.unit === 'in' ? 'in' : 'mm';
    onChange({ ...setup, places: [...places, newPlace({ size: unit }, newId)] });
  };
  return (
    <SheetFrame
      title={`Micrometer: ${pairName(faces)}`}
      subtitle={`Places count up from the ${edges.up} and in from the ${edges.across} edge.`}
      locked={locked}
      onRemove={onRemove}
    >
      <Thicknesses
        across={depthBehind(part.block, edges.across)}
        up={depthBehind(part.block, edges.up)}
        edgeNames={{
          bottom: edges.up,
          top: oppositeFace(edges.up),
          left: edges.across,
          right: oppositeFace(edges.across),
        }}
        places={placesOnFace(setup, part, active)}
        label={`Places of the micrometer between ${pairName(faces)}`}
      />
      {places.map((place, index) => (
        <Place
          key={place.id}
          {...props}
          place={place}
          index={index}
          onFocus={() => setActive(index)}
        />
      ))}
      {!locked && (
        <button type="button" class="button" onClick={add}>
          Add a place
        </button>
      )}
    </SheetFrame>
  );
}

interface PlaceProps extends SetupSheetProps<MicrometerSetup> {
  readonly place: MicrometerPlace;
  readonly index: number;
  readonly onFocus: () => void;
}

const FIELDS = [
  ['up', 'Up from', fieldKey.up],
  ['across', 'In from', fieldKey.across],
  ['thickness', 'Thickness', fieldKey.thickness],
] as const;

function Place({ setup, part, place, index, problems, locked, onChange, onFocus }: PlaceProps) {
  const edges = placeEdges(setup.faces[0], part.datum);
  const put = (field: 'up' | 'across' | 'thickness', text: string) => {
    const changed = { ...place, [field]: { ...place[field], text } };
    const places = setup.places.map((one) => (one.id === place.id ? changed : one));
    onChange({ ...setup, places });
  };
  const remove = () =>
    onChange({ ...setup, places: setup.places.filter(({ id }) => id !== place.id) });
  return (
    <fieldset class="stack">
      <legend class="sheet-head">
        Place {index + 1}
        {!locked && setup.places.length > 1 && (
          <button
            type="button"
            class="button button-quiet"
            aria-label={`Remove place ${index + 1}`}
            onClick={remove}
          >
            Remove
          </button>
        )}
      </legend>
      <div class="columns">
        {FIELDS.map(([name, label, key]) => (
          <NumberField
            key={name}
            reading={name === 'thickness'}
            wide={name === 'thickness'}
            optional={name === 'across'}
            field={key(place.id)}
            label={name === 'thickness' ? label : `${label} ${edges[name]}`}
            text={place[name].text}
            unit={place[name].unit}
            placeholder={name === 'across' ? 'middle' : ''}
            problem={problems.get(key(place.id))}
            disabled={locked}
            onFocus={onFocus}
            onText={(text) => put(name, text)}
          />
        ))}
      </div>
    </fieldset>
  );
}
