import { type Block, depthBehind, type Triple } from '../core/part/block';
import {
  axesInFace,
  type Face,
  faceTowards,
  oppositeFace,
  outwardNormal,
} from '../core/part/faces';

/**
 * The two edges of `face` that places on it are measured from: `up` and `across`. Where the part's
 * datum shares an edge with the face, that edge is `up`; otherwise the bottom, front and left ones serve.
 */
export function placeEdges(face: Face, datum: Face): { readonly up: Face; readonly across: Face } {
  const [first, second] = axesInFace(face);
  const datumAxis = outwardNormal(datum).axis;
  // With no datum on the face, the later axis is up: as in a plan view, where Y runs up.
  const [across, up] = first === datumAxis ? [second, first] : [first, second];
  return {
    up: up === datumAxis ? datum : faceTowards(up, -1),
    across: faceTowards(across, -1),
  };
}

/** True where `face` is upright while the part stands on its datum: then a place is up from that, not in from an edge. */
export function isUpright(face: Face, datum: Face): boolean {
  return outwardNormal(face).axis !== outwardNormal(datum).axis;
}

/** The faces at the four edges of a face that is drawn with `up` at its lower edge and `across` at its left one. */
export function edgesAsDrawn({ up, across }: ReturnType<typeof placeEdges>) {
  return { bottom: up, top: oppositeFace(up), left: across, right: oppositeFace(across) };
}

/** How far `point` is in from `edge`, mm. */
export function distanceFrom(edge: Face, point: Triple, block: Block): number {
  const { axis, sign } = outwardNormal(edge);
  return depthBehind(block, edge) / 2 - sign * point[axis];
}
