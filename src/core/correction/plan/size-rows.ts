import { thicknessDeparture } from '../../part/face-errors';
import { AXES, type Axis, faceTowards } from '../../part/faces';
import { scaled, sum, unknown } from '../../part/linear-form';
import type { Part } from '../../part/part';
import type { GuardedCorner } from './guard';
import { changeByCuts, type PlanRow } from './rows';
import type { Sizes } from './sizes';

/** Name of how far the size along `axis` may fall short of its lower limit, µm. */
export function shortfallOf(axis: Axis): string {
  return `shortfall along ${axis}`;
}

/**
 * Each size that is known, less its guard, is to stay above its lower limit at all four corners. An upper
 * limit asks nothing: a cut only makes the size less.
 */
export function sizeRows(part: Part, sizes: Sizes<GuardedCorner>): readonly PlanRow[] {
  return AXES.flatMap((axis) => {
    const lower = part.sizeLimits?.[axis]?.lower;
    const corners = sizes[axis];
    if (lower === undefined || corners === undefined) return [];
    return corners.map(({ point, departure, guard }) => {
      const form = thicknessDeparture(faceTowards(axis, 1), point);
      const comesOff = scaled(changeByCuts(form, part.block), -1);
      return {
        form: sum(comesOff, scaled(unknown(shortfallOf(axis)), -1)),
        limit: departure - guard - lower,
      };
    });
  });
}
