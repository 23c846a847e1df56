import { type Block, cornersOf, type FaceCorner } from '../part/block';
import { offsetOf, slopeOf } from '../part/face-errors';
import { type Axis, axesInFace, type Face, faceTowards } from '../part/faces';
import { type LinearForm, sum } from '../part/linear-form';

/** Slopes along the two axes of a face, µm/mm; an axis that is left out is 0. */
export type FaceSlopes = Readonly<Partial<Record<Axis, number>>>;

/** What comes off a face: a plane wedge that is nowhere below 0. */
export interface Removal {
  readonly face: Face;
  /** µm at the middle of the face: the mean over it. */
  readonly mean: number;
  /** µm more per mm along each axis in the face. */
  readonly slopes: FaceSlopes;
}

/** µm that come off at one corner. */
export interface CornerRemoval extends FaceCorner {
  readonly removal: number;
}

/** The plane wedge with these `slopes` that takes least: it feathers to nothing at the low edge or corner. */
export function leastRemoval(block: Block, face: Face, slopes: FaceSlopes): Removal {
  const rise = axesInFace(face).reduce(
    (total, axis) => total + Math.abs(slopes[axis] ?? 0) * block.size[axis],
    0,
  );
  return { face, mean: rise / 2, slopes };
}

/** Removal at the four corners of the face, µm. */
export function atCorners(block: Block, removal: Removal): readonly CornerRemoval[] {
  return cornersOf(block, removal.face).map((corner) => {
    const rise = axesInFace(removal.face).reduce(
      (total, axis) => total + (removal.slopes[axis] ?? 0) * corner.point[axis],
      0,
    );
    // Rounding may leave a feathered corner a hair below 0.
    return { ...corner, removal: Math.max(0, removal.mean + rise) };
  });
}

/** The most that comes off anywhere, µm: the wedge at the high edge or corner. */
export function wedgeOf(block: Block, removal: Removal): number {
  return Math.max(...atCorners(block, removal).map((corner) => corner.removal));
}

/** Stock removed, mm³. */
export function volumeOf(block: Block, removal: Removal): number {
  const [u, v] = axesInFace(removal.face);
  return (removal.mean / 1000) * block.size[u] * block.size[v];
}

/** The neighbours that the removal grows towards: one names the high edge, two the high corner, none a level cut. */
export function highSide(removal: Removal): readonly Face[] {
  return axesInFace(removal.face).flatMap((axis) => {
    const slope = removal.slopes[axis] ?? 0;
    return slope === 0 ? [] : [faceTowards(axis, slope)];
  });
}

/** What the removal does to the unknowns of its face: it takes from offset and slopes. */
export function changeOfUnknowns(removal: Removal): LinearForm {
  return new Map([
    [offsetOf(removal.face), -removal.mean],
    ...axesInFace(removal.face).map(
      (axis) => [slopeOf(removal.face, axis), -(removal.slopes[axis] ?? 0)] as const,
    ),
  ]);
}

/** The same for several removals together. */
export function changeByAll(removals: readonly Removal[]): LinearForm {
  return sum(...removals.map(changeOfUnknowns));
}
