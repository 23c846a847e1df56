import { areOpposite, type Face, oppositeFace, pairsAround } from '../core/part/faces';
import type { PartEntry } from './part-entry';
import { isUpright } from './place-edges';

/** Two opposite faces to be read with the part standing on `base`. */
export interface PairToRead {
  readonly faces: readonly [Face, Face];
  readonly base: Face;
}

/**
 * What the drawing asks to have read, in its order: each pair of faces once on each base. Opposite
 * faces are read on the datum they share, or on the part's own. With nothing asked yet, every pair
 * round the part's datum.
 */
export function pairsToRead(
  entry: Pick<PartEntry, 'datum' | 'requirements'>,
): readonly PairToRead[] {
  const pairs = entry.requirements
    .filter(({ face, datum }) => face !== datum)
    .map(({ face, datum }) => ({
      faces: [face, oppositeFace(face)] as const,
      base: areOpposite(face, datum) ? entry.datum : datum,
    }));
  const asked = pairs.filter(
    (pair, index) => pairs.findIndex((other) => samePair(other, pair)) === index,
  );
  if (asked.length > 0) return asked;
  return pairsAround(entry.datum).map((faces) => ({ faces, base: entry.datum }));
}

/** The faces that are to be flat, each once with the one opposite: to be mapped, the first of the pair upward. */
export function facesToMap({
  datum,
  flatness = [],
}: Pick<PartEntry, 'datum' | 'flatness'>): readonly PairToRead[] {
  const faces = [...new Set(flatness.map(({ face }) => face))];
  return faces.map((face) => ({ faces: [face, oppositeFace(face)], base: datum }));
}

/** True where both name the same two faces, in whatever order, on the same base. */
export function samePair(a: PairToRead, b: PairToRead): boolean {
  return a.base === b.base && a.faces.includes(b.faces[0]);
}

/** True where the pair stands upright on its base, so that a comparator can read it. */
export function isUprightPair({ faces, base }: PairToRead): boolean {
  return isUpright(faces[0], base);
}
