import { hashOfNumbers } from '../statistics/hash';
import { randomFrom } from '../statistics/random';
import { type FormPoint, widthWithForm } from '../zones/zone-with-form';
import { type Drawn, drawUntilStable } from './adaptive';
import { type KnownParts, widthDraws } from './width-draws';

/** A zone with form, to be held against a tolerance. */
export interface ZoneToSimulate extends KnownParts {
  readonly points: readonly FormPoint[];
  /** µm, 0 or more. */
  readonly tolerance: number;
  /** A whole number; left out, that of the readings, `seedOf`. */
  readonly seed?: number;
}

/** The width of a zone with form, µm, as the doubt of the readings leaves it. */
export interface SimulatedZone extends Drawn {
  /** The width at the values themselves. Where form is within the noise the mean lies above it. */
  readonly width: number;
}

/**
 * Propagates the doubt of the parts and of the readings of form to the width of the zone by Monte
 * Carlo (JCGM 101:2008, 7): the width is no linear function of them. The probability is that of
 * conformity (JCGM 106:2012, 6): the true width being no more than the tolerance.
 *
 * What is known of the form at a point is its likely form and the doubt of that (`likelyForm`). The
 * width takes the greatest and the least of them, so that doubt widens it: it errs a little to the
 * side of too wide.
 *
 * @throws RangeError where a number is not finite (but for the degrees), a standard uncertainty or
 *   the tolerance is below 0, degrees are below 1, there are not one or two parts, the points have
 *   not as many shares, or the seed is not a whole number.
 */
export function simulateZone(zone: ZoneToSimulate): SimulatedZone {
  refuseNonsense(zone);
  const { parts, points, tolerance, seed = seedOf(zone) } = zone;
  const values = parts.map(({ value }) => value);
  const width = widthWithForm(values, points);
  const fill = widthDraws(zone, points, randomFrom(seed));
  return { width, ...drawUntilStable(fill, tolerance, width) };
}

/** Draws that tell a probability near 95 % to 0.001. */
const DRAWS_FOR_PROBABILITY = 50_000;

/**
 * The probability of `simulateZone` alone, to about 0.001 near 95 %: enough for planning, in a part of
 * the time.
 *
 * @throws RangeError as `simulateZone` does.
 */
export function probabilityWithForm(zone: ZoneToSimulate): number {
  refuseNonsense(zone);
  const { points, tolerance, seed = seedOf(zone) } = zone;
  const draws = new Float64Array(DRAWS_FOR_PROBABILITY);
  widthDraws(zone, points, randomFrom(seed))(draws);
  return draws.filter((width) => width <= tolerance).length / draws.length;
}

/**
 * The seed for a zone: the same readings give the same answer, to the last digit. The tolerance is
 * left out, so that one tolerance is held against the same draws as another.
 */
export function seedOf(zone: Omit<ZoneToSimulate, 'tolerance' | 'seed'>): number {
  const groups = [...new Set(zone.points.map(({ group }) => group))];
  return hashOfNumbers([
    zone.degreesOfFreedom,
    zone.covariance,
    ...zone.parts.flatMap(({ value, standard }) => [value, standard]),
    ...zone.points.flatMap(({ shares, residual, group, standard }) => [
      ...shares,
      residual,
      standard,
      groups.indexOf(group),
    ]),
  ]);
}

function refuseNonsense(zone: ZoneToSimulate): void {
  const { parts, covariance, degreesOfFreedom, points, tolerance } = zone;
  if (parts.length !== 1 && parts.length !== 2) throw new RangeError('A zone has one part or two');
  if (!(degreesOfFreedom >= 1)) throw new RangeError('Degrees of freedom are 1 or more');
  refuseUnlessFinite([covariance, ...parts.map(({ value }) => value)]);
  refuseUnlessFinite(points.flatMap(({ shares, residual }) => [...shares, residual]));
  const sizes = [tolerance, ...[...parts, ...points].map(({ standard }) => standard)];
  refuseUnlessFinite(sizes);
  if (sizes.some((size) => size < 0)) {
    throw new RangeError('Tolerance and standard uncertainties are 0 or more');
  }
  if (points.some(({ shares }) => shares.length !== parts.length)) {
    throw new RangeError('A point has a share along each part');
  }
}

function refuseUnlessFinite(numbers: readonly number[]): void {
  if (!numbers.every(Number.isFinite)) throw new RangeError('A number is not finite');
}
