import { areNeighbours, areOpposite, type Face, oppositeFace } from '../core/part/faces';

/*
 * What the fields of an entry owe each other: the screens see to it while somebody types, and
 * nobody does in a file or on a worn disk.
 */

interface WithId {
  readonly id: string;
}

/** True where no two have the same id. */
export function distinctIds(all: readonly WithId[]): boolean {
  return new Set(all.map(({ id }) => id)).size === all.length;
}

/** True for a pair of faces that look away from each other. */
export function arePair([one, other]: readonly [Face, Face]): boolean {
  return areOpposite(one, other);
}

interface Standing {
  readonly faces: readonly [Face, Face];
  readonly base: Face;
  readonly placings: readonly { readonly face: Face; readonly base?: Face | undefined }[];
}

/** True where the block can stand as the setup says: each face read shares an edge with what it stands on, in one section. */
export function standsInSection({ faces, base, placings }: Standing): boolean {
  if (!areNeighbours(faces[0], base)) return false;
  const section = [...faces, base, oppositeFace(base)];
  return placings.every(({ face, base: stand = base }) => {
    return section.includes(face) && section.includes(stand) && areNeighbours(face, stand);
  });
}

interface Traversed {
  readonly heights: readonly WithId[];
  readonly placings: readonly { readonly readings: Readonly<Record<string, unknown>> }[];
}

/** True where every traverse has a field for each height, and no other. */
export function hasEveryHeight({ heights, placings }: Traversed): boolean {
  return placings.every(({ readings }) => {
    const names = Object.keys(readings);
    return (
      names.length === heights.length && heights.every(({ id }) => Object.hasOwn(readings, id))
    );
  });
}
