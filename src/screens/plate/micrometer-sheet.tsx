import { useState } from 'preact/hooks';
import { fieldKey } from '../../entry/field-keys';
import { newPlace } from '../../entry/new-setup';
import { isUpright, placeEdges } from '../../entry/place-edges';
import { looksLikeThickness } from '../../entry/place-or-thickness';
import { withoutPlace, withPlace } from '../../entry/places';
import type { MicrometerPlace, MicrometerSetup } from '../../entry/setup-entry';
import { takenOver, withThickness } from '../../entry/taken-over';
import { newId } from '../../state/shop';
import { goToField } from '../../widgets/number-fields';
import { pairName } from '../../words/faces';
import { FacePlaces } from './face-places';
import { PlaceFields } from './place-fields';
import { ReadWith, ReadWithFirst } from './read-with';
import { ReadingField } from './reading-field';
import { type SetupSheetProps, SheetFrame } from './setup-sheet';

/** Thicknesses between the two faces, each with its place. */
export function MicrometerSheet(props: SetupSheetProps<MicrometerSetup>) {
  const { setup, part, before, lastTime, locked, onChange, onRemove } = props;
  const { faces, places } = setup;
  const edges = placeEdges(faces[0], part.datum);
  const stands = isUpright(faces[0], part.datum);
  const [active, setActive] = useState(0);
  const takeOver = (now: MicrometerSetup) => lastTime && takenOver(now, before, lastTime);
  const drawn = places.map((place) => ({ ...place, text: place.thickness.text }));
  const add = () => {
    const unit = places.at(-1)?.up.unit === 'in' ? 'in' : 'mm';
    onChange((now) => ({ ...now, places: [...now.places, newPlace({ size: unit }, newId)] }));
  };
  return (
    <SheetFrame
      title={`Micrometer: ${pairName(faces)}`}
      subtitle={`Places count ${stands ? 'up' : 'in'} from the ${edges.up} and in from the ${edges.across} edge.`}
      help="micrometer"
      locked={locked}
      onRemove={onRemove}
    >
      <FacePlaces
        face={setup.faces[0]}
        part={part}
        places={drawn}
        active={active}
        label={`Places of the micrometer between ${pairName(faces)}`}
        onPick={(index) => goToField(fieldKey.thickness(places[index]?.id ?? ''))}
      />
      {!locked && takeOver(setup) !== undefined && (
        <button
          type="button"
          class="button"
          onClick={() => onChange((now) => takeOver(now) ?? now)}
        >
          As last time: neither face was worked since
        </button>
      )}
      {props.beside}
      <ReadWithFirst {...props} />
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
      <ReadWith {...props} />
    </SheetFrame>
  );
}

interface PlaceProps extends SetupSheetProps<MicrometerSetup> {
  readonly place: MicrometerPlace;
  readonly index: number;
  readonly onFocus: () => void;
}

function Place(props: PlaceProps) {
  const { setup, part, place, index, problems, before, locked, onChange, onFocus } = props;
  const put = (changed: Partial<MicrometerPlace>) =>
    onChange((now) => withPlace(now, place.id, changed));
  const remove = () => onChange((now) => withoutPlace(now, place.id));
  const edges = placeEdges(setup.faces[0], part.datum);
  return (
    <PlaceFields
      place={place}
      number={index + 1}
      edges={edges}
      stands={isUpright(setup.faces[0], part.datum)}
      problems={problems}
      locked={locked}
      // Three tell a plane, where they do not lie on one line.
      asksAcross={setup.places.length > 2}
      noteOf={(distance) =>
        looksLikeThickness(distance, setup.faces[0], part.block)
          ? 'A place, as it stands. Is it a thickness?'
          : undefined
      }
      onChange={put}
      onRemove={setup.places.length > 1 ? remove : undefined}
      onFocus={onFocus}
    >
      <ReadingField
        wide
        before={before}
        field={fieldKey.thickness(place.id)}
        label="Thickness"
        typed={place.thickness}
        problems={problems}
        disabled={locked}
        onFocus={onFocus}
        takenOver={place.takenOver}
        onTyped={(typed) => onChange((now) => withThickness(now, place.id, typed))}
      />
    </PlaceFields>
  );
}
