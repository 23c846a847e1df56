import type { Face } from '../core/part/faces';
import type { LengthUnit } from '../core/units/length';
import type { NewId } from './new-id';
import type { MicrometerPlace, SetupEntry, SetupKind } from './setup-entry';
import { readHere } from './taken-over';
import { blank, smallUnit, type TypedLength } from './typed-length';

/** The units that a new setup's fields begin with. */
export interface EntryUnits {
  /** Sizes, heights and places. */
  readonly size: 'mm' | 'in';
  /** What the indicator shows. */
  readonly reading: LengthUnit;
}

/** A setup of `kind` for one pair of faces, with its fields still empty. */
export function newSetup(
  kind: SetupKind,
  faces: readonly [Face, Face],
  base: Face,
  units: EntryUnits,
  newId: NewId,
): SetupEntry {
  const id = newId();
  switch (kind) {
    case 'nose comparator':
      return {
        ...{ kind, id, faces, base },
        noseHeight: blank(units.size),
        indicatorHeight: blank(units.size),
        placings: faces.map((face) => ({ id: newId(), face, reading: blank(units.reading) })),
      };
    case 'column': {
      const heights = [newId(), newId()].map((heightId) => ({
        id: heightId,
        height: blank(units.size),
      }));
      const readings = Object.fromEntries(heights.map((row) => [row.id, blank(units.reading)]));
      return {
        ...{ kind, id, faces, base, heights },
        placings: faces.map((face) => ({ id: newId(), face, readings })),
      };
    }
    case 'micrometer':
      return { kind, id, faces, places: newPlaces(faces.includes(base) ? 3 : 2, units, newId) };
    case 'over the top':
    case 'face map':
      return { kind, id, faces, places: [] };
    case 'assumed parallel':
      return { kind, id, faces, within: blank(smallUnit(units.size)) };
  }
}

/** Two heights show how a standing pair tapers; lying faces can lean to each other any way, which takes three. */
function newPlaces(count: number, units: EntryUnits, newId: NewId): readonly MicrometerPlace[] {
  return Array.from({ length: count }, () => newPlace(units, newId));
}

/** A place for the micrometer, still empty. */
export function newPlace(units: Pick<EntryUnits, 'size'>, newId: NewId): MicrometerPlace {
  return {
    id: newId(),
    up: blank(units.size),
    across: blank(units.size),
    thickness: blank(units.size),
  };
}

/** The same setup with a place more where it is a micrometer's: two tell a taper, three a plane. */
export function withOneMorePlace(setup: SetupEntry, newId: NewId): SetupEntry {
  const [first] = setup.kind === 'micrometer' ? setup.places : [];
  if (setup.kind !== 'micrometer' || first === undefined) return setup;
  const size = first.up.unit === 'in' ? 'in' : 'mm';
  return { ...setup, places: [...setup.places, newPlace({ size }, newId)] };
}

/**
 * The same setup to be read again: heights, places and faces stay, what the instruments showed is
 * empty. An assumption is not carried over where one of its faces was worked: it may no longer hold.
 */
export function readAgain(setup: SetupEntry, newId: NewId, worked?: Face): SetupEntry | undefined {
  const id = newId();
  switch (setup.kind) {
    case 'nose comparator':
      return {
        ...setup,
        id,
        placings: setup.placings.map((placing) => ({
          ...placing,
          id: newId(),
          reading: emptied(placing.reading),
        })),
      };
    case 'column':
      return {
        ...setup,
        id,
        placings: setup.placings.map(({ readings, ...placing }) => ({
          ...placing,
          id: newId(),
          readings: Object.fromEntries(
            Object.entries(readings).map(([height, reading]) => [height, emptied(reading)]),
          ),
        })),
      };
    case 'micrometer':
      return {
        ...setup,
        id,
        places: setup.places.map((place) => ({
          ...readHere(place, emptied(place.thickness)),
          id: newId(),
        })),
      };
    case 'over the top':
    case 'face map':
      return {
        ...setup,
        id,
        places: setup.places.map((place) => ({
          ...place,
          id: newId(),
          reading: emptied(place.reading),
        })),
      };
    case 'assumed parallel':
      return worked !== undefined && setup.faces.includes(worked) ? undefined : { ...setup, id };
  }
}

function emptied(typed: TypedLength): TypedLength {
  return blank(typed.unit);
}
