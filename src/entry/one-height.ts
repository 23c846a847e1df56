import type { Face } from '../core/part/faces';
import type { MicrometerPlace, SetupEntry } from './setup-entry';
import { isBlank, readTyped, type TypedLength } from './typed-length';

/** Where the thickness behind `face` was read at several places that are all at one height, which tells no taper: that height. */
export function oneHeightOf(setups: readonly SetupEntry[], face: Face): TypedLength | undefined {
  const read = setups.flatMap((setup) =>
    setup.kind === 'micrometer' && setup.faces.includes(face)
      ? setup.places.filter(({ thickness }) => !isBlank(thickness))
      : [],
  );
  const [first, ...others] = read;
  const height = first && heightOf(first);
  const areLevel = height !== undefined && others.every((place) => heightOf(place) === height);
  return others.length > 0 && areLevel ? first?.up : undefined;
}

function heightOf({ up }: MicrometerPlace): number | undefined {
  const read = readTyped(up);
  return read.kind === 'length' ? read.length : undefined;
}
