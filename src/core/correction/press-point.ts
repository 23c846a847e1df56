import type { Block } from '../part/block';
import { type Axis, axesInFace } from '../part/faces';
import type { Removal } from './removal';

/**
 * Where to press so that lapping takes `removal`, in mm from the middle of the face along each of
 * its axes.
 *
 * A rigid block on an even bed has linear pressure, and removal follows pressure × speed (Preston,
 * J. Soc. Glass Technology 11, 1927): pressed at (eu, ev) on a face Lu × Lv it takes
 * mean·(1 + 12·eu·u/Lu² + 12·ev·v/Lv²). A wedge that feathers to nothing so asks for
 * |eu|/Lu + |ev|/Lv = 1/6, the edge of the kern: any further out and the low edge lifts.
 *
 * @throws RangeError where nothing is to come off.
 */
export function pressPoint(
  block: Block,
  removal: Removal,
): Readonly<Partial<Record<Axis, number>>> {
  if (!(removal.mean > 0)) throw new RangeError('Nothing comes off, so there is nowhere to press');
  return Object.fromEntries(
    axesInFace(removal.face).map((axis) => {
      const slope = removal.slopes[axis] ?? 0;
      return [axis, (slope * block.size[axis] ** 2) / (12 * removal.mean)];
    }),
  );
}
