import type { Face } from '../core/part/faces';
import { fieldKey } from './field-keys';
import type { ReadingsBefore } from './readings-before';
import type { MicrometerPlace, MicrometerSetup } from './setup-entry';
import { isBlank, type TypedLength } from './typed-length';

/** The readings before these, and what was done since. */
export interface LastTime {
  /** When they were begun, ISO 8601 in UTC. */
  readonly made: string;
  /** Faces that were worked since. */
  readonly worked: readonly Face[];
}

/**
 * The setup with the thicknesses of last time in its empty places, each with when it was read;
 * undefined where none can be taken over: a face was worked since, or nothing was read there.
 */
export function takenOver(
  setup: MicrometerSetup,
  before: ReadingsBefore,
  { made, worked }: LastTime,
): MicrometerSetup | undefined {
  if (setup.faces.some((face) => worked.includes(face))) return undefined;
  const places = setup.places.map((place): MicrometerPlace => {
    const then = before.get(fieldKey.thickness(place.id));
    if (!isBlank(place.thickness) || then?.when !== 'last time') return place;
    return { ...place, thickness: then.typed, takenOver: then.takenOver ?? made };
  });
  const isAny = places.some((place, index) => place !== setup.places[index]);
  return isAny ? { ...setup, places } : undefined;
}

/** The setup with what is read at the place `id`, here and now. */
export function withThickness(
  setup: MicrometerSetup,
  id: string,
  thickness: TypedLength,
): MicrometerSetup {
  const places = setup.places.map((place) =>
    place.id === id ? readHere(place, thickness) : place,
  );
  return { ...setup, places };
}

/** The place with a thickness that was not taken over. */
export function readHere(
  { takenOver: _, ...place }: MicrometerPlace,
  thickness: TypedLength,
): MicrometerPlace {
  return { ...place, thickness };
}
