import { type Block, depthBehind } from '../part/block';
import { type Axis, axesInFace, type Face, outwardNormal } from '../part/faces';
import { highSide, type Removal } from './removal';

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

/** The press point as a hand finds it: mm in from each edge that the removal grows towards. */
export function pressDistances(
  block: Block,
  removal: Removal,
): readonly { readonly from: Face; readonly distance: number }[] {
  const point = pressPoint(block, removal);
  return highSide(removal).map((from) => {
    const offset = Math.abs(point[outwardNormal(from).axis] ?? 0);
    return { from, distance: depthBehind(block, from) / 2 - offset };
  });
}
