import type { Adjustment } from '../../adjustment/adjustment';
import { taper } from '../../part/face-errors';
import { axesInFace, type Face, faceTowards } from '../../part/faces';
import type { Tapers } from './shims';

/** The tapers between `face` and its opposite, as far as `adjustment` fixes them. */
export function tapersOf(face: Face, adjustment: Adjustment): Tapers {
  return Object.fromEntries(
    axesInFace(face).flatMap((axis) => {
      const growth = adjustment.valueOf(taper(face, faceTowards(axis, 1)));
      return growth === undefined ? [] : [[axis, growth] as const];
    }),
  );
}
