import { RANK_TOLERANCE } from '../../adjustment/least-squares';
import type { Numbers } from './points';
import { standardise } from './vectors';

/** The places of points in one direction. */
export interface Axis {
  /** Centred and scaled so that the furthest is at 1 or -1; all 0 where all are at the middle. */
  readonly values: Float64Array;
  /** Mean place, mm. */
  readonly middle: number;
  /** mm for 1 on the axis; 0 where all are at the middle. */
  readonly scale: number;
  /** Least difference that is not rounding, on the axis. */
  readonly blur: number;
}

/** What rounding may leave of a difference, in parts of the numbers that it was taken between. */
const ROUNDING = 4 * Number.EPSILON;

/**
 * The axes of points, made in place. Places that differ only as rounding does, by themselves or
 * beside those along the other axis, are one place.
 */
export function axesOf(numbers: Numbers): { readonly u: Axis; readonly v: Axis } {
  const [u, v] = [axisOf(numbers, 'u'), axisOf(numbers, 'v')];
  return { u: onePlaceUnlessSpread(u, v.scale), v: onePlaceUnlessSpread(v, u.scale) };
}

function axisOf(numbers: Numbers, way: 'u' | 'v'): Axis {
  const values = numbers[way];
  const { mean, scale } = standardise(values);
  const middle = numbers.first[way] + mean;
  return { values, middle, scale, blur: (ROUNDING * Math.abs(middle)) / scale + ROUNDING };
}

function onePlaceUnlessSpread(axis: Axis, otherScale: number): Axis {
  const isSpread = axis.blur < 1 && axis.scale > RANK_TOLERANCE * otherScale;
  return isSpread ? axis : { ...axis, values: axis.values.fill(0), scale: 0 };
}
