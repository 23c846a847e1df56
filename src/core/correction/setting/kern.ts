import type { Block } from '../../part/block';
import { axesInFace, type Face } from '../../part/faces';
import { pressPoint } from '../press-point';
import type { Removal } from '../removal';

/** A place on a face, mm from its middle along each of its axes; an axis that is left out is 0. */
export type FacePoint = ReturnType<typeof pressPoint>;

/**
 * How far out a point lies of the way that keeps the whole face down: (|eu|/Lu + |ev|/Lv)/(1/6),
 * the kern of a rectangle. 0 is the middle, 1 the edge of the kern; beyond that the low edge lifts.
 */
export function kernShare(block: Block, face: Face, point: FacePoint): number {
  return axesInFace(face).reduce(
    (total, axis) => total + (6 * Math.abs(point[axis] ?? 0)) / block.size[axis],
    0,
  );
}

/**
 * The share of the kern that lapping `removal` needs: 1 for a wedge that feathers to nothing, less
 * for a deeper cut, and above 1 where it would have to add at the low side.
 *
 * @throws RangeError where nothing comes off.
 */
export function kernShareOf(block: Block, removal: Removal): number {
  return kernShare(block, removal.face, pressPoint(block, removal));
}
