import { studentQuantile } from '../../statistics/student';
import type { Zone } from '../../zones/zone';
import type { SizeAtCorner, Sizes } from './sizes';

/**
 * How many standard uncertainties are to be added to a value so that the truth lies below it with the
 * probability `level`: the one-sided quantile of Student's distribution, of the normal one where
 * the degrees are infinite, as the probability of conformity takes them (JCGM 106:2012, 8.3).
 */
export function guardFactor(level: number, degreesOfFreedom: number): number {
  return studentQuantile(level, degreesOfFreedom);
}

/**
 * Standard uncertainty, µm, of Σ weight·part of a zone, and of something independent of it (GUM
 * 5.2.2).
 */
export function standardOf(
  { parts, covariance }: Pick<Zone, 'parts' | 'covariance'>,
  weights: readonly number[],
  independent: number,
): number {
  let variance = independent * independent;
  parts.forEach(({ standard }, k) => {
    variance += (weights[k]! * standard) ** 2;
  });
  if (parts.length > 1) variance += 2 * weights[0]! * weights[1]! * covariance;
  return Math.sqrt(Math.max(0, variance));
}

/** A size at a corner with the guard for its doubt, µm. */
export interface GuardedCorner extends SizeAtCorner {
  readonly guard: number;
}

/** The sizes with their guards at `level`. */
export function guardedSizes({ x, y, z }: Sizes, level: number): Sizes<GuardedCorner> {
  const guarded = (corners: readonly SizeAtCorner[] | undefined) =>
    corners?.map((corner) => ({
      ...corner,
      guard: corner.standard * guardFactor(level, corner.degreesOfFreedom),
    }));
  return { x: guarded(x), y: guarded(y), z: guarded(z) };
}
