/*
 * The chi-square distribution for any real number of degrees of freedom from 1 up. The smaller of
 * the two parts is right to 1e-12 of itself, quantiles to 1e-12, for up to 1e6 degrees of freedom.
 */

import { gammaParts, gammaTerm } from './incomplete-gamma';
import { normalQuantile } from './normal';
import { positiveRoot } from './root';

/**
 * The part of the distribution below `value` (A&S 26.4.19).
 *
 * @throws RangeError where `value` is below 0 or `degrees` is below 1 or not finite.
 */
export function chiSquareBelow(value: number, degrees: number): number {
  refuseNonsense(value, degrees);
  return gammaParts(degrees / 2, value / 2).below;
}

/** The part of the distribution above `value`, small parts with all their digits. Throws as above. */
export function chiSquareAbove(value: number, degrees: number): number {
  refuseNonsense(value, degrees);
  return gammaParts(degrees / 2, value / 2).above;
}

/**
 * The value below which `part` of the distribution lies, found in the smaller tail.
 *
 * @throws RangeError where `part` is not between 0 and 1, or `degrees` is below 1 or not finite.
 */
export function chiSquareQuantile(part: number, degrees: number): number {
  if (!(part > 0 && part < 1)) throw new RangeError('A part lies between 0 and 1');
  refuseNonsense(0, degrees);
  const a = degrees / 2;
  const upper = part > 0.5;
  const half = positiveRoot((x) => {
    const { below, above } = gammaParts(a, x);
    // x·density of the gamma distribution.
    const rise = gammaTerm(a, x) * a;
    return upper
      ? { value: Math.log((1 - part) / above), slope: rise / above }
      : { value: Math.log(below / part), slope: rise / below };
  }, roughQuantile(part, degrees) / 2);
  return 2 * half;
}

/** Wilson and Hilferty, Proceedings of the National Academy of Sciences 17 (1931); A&S 26.4.17. */
function roughQuantile(part: number, degrees: number): number {
  const variance = 2 / (9 * degrees);
  return degrees * Math.max(0.01, 1 - variance + normalQuantile(part) * Math.sqrt(variance)) ** 3;
}

function refuseNonsense(value: number, degrees: number): void {
  if (!(degrees >= 1 && degrees < Number.POSITIVE_INFINITY)) {
    throw new RangeError('Degrees of freedom are 1 or more');
  }
  if (!(value >= 0)) throw new RangeError('A chi-square is not below 0');
}
