/*
 * Student's t distribution for any real number of degrees of freedom from 1 up, Infinity being the
 * normal distribution. Parts and quantiles are right to 1e-13 of themselves; tails of 1e-25 and
 * less, with 1000 degrees of freedom or more, to 1e-9.
 */

import { betaFraction } from './incomplete-beta';
import { normalBelow, normalDensity, normalQuantile } from './normal';
import { positiveRoot } from './root';

/** From here on Hill's expansion is exact to rounding; the continued fraction begins to gather it. */
const MANY_DEGREES = 1000;

/**
 * The part of the distribution below `t`.
 *
 * @param degrees degrees of freedom, 1 or more, Infinity too.
 * @throws RangeError where `degrees` is below 1 or `t` is not a number.
 */
export function studentBelow(t: number, degrees: number): number {
  refuseNonsense(degrees);
  if (Number.isNaN(t)) throw new RangeError('t is not a number');
  return t < 0 ? tail(-t, degrees) : 1 - tail(t, degrees);
}

/** Density of the distribution at `t`. @throws RangeError where `degrees` is below 1. */
export function studentDensity(t: number, degrees: number): number {
  refuseNonsense(degrees);
  if (degrees === Number.POSITIVE_INFINITY) return normalDensity(t);
  const power = ((degrees + 1) / 2) * logOnePlusSquare(t, degrees);
  return (halfStep(degrees / 2) / Math.sqrt(degrees * Math.PI)) * Math.exp(-power);
}

/**
 * The t below which `part` of the distribution lies.
 *
 * @throws RangeError where `part` is not between 0 and 1, or `degrees` is below 1.
 */
export function studentQuantile(part: number, degrees: number): number {
  refuseNonsense(degrees);
  if (!(part > 0 && part < 1)) throw new RangeError('A part lies between 0 and 1');
  if (part > 0.5) return -studentQuantile(1 - part, degrees);
  if (part === 0.5) return 0;
  if (degrees === Number.POSITIVE_INFINITY) return normalQuantile(part);
  const logPart = Math.log(part);
  return -positiveRoot((t) => {
    const beyond = tail(t, degrees);
    return {
      value: logPart - Math.log(beyond),
      slope: (t * studentDensity(t, degrees)) / beyond,
    };
  }, -normalQuantile(part));
}

/**
 * The t for which `part` of the distribution lies within ±t: the t factor of GUM Table G.2.
 *
 * @throws RangeError where `part` is not between 0 and 1, or `degrees` is below 1.
 */
export function studentWithin(part: number, degrees: number): number {
  if (!(part > 0 && part < 1)) throw new RangeError('A part lies between 0 and 1');
  return Math.abs(studentQuantile((1 - part) / 2, degrees));
}

function refuseNonsense(degrees: number): void {
  if (!(degrees >= 1)) throw new RangeError('Degrees of freedom are 1 or more');
}

/** The part above `t` ≥ 0: ½·I_x(ν/2, ½) with x = ν/(ν + t²) (A&S 26.7.1 and 26.5.27). */
function tail(t: number, degrees: number): number {
  if (t === Number.POSITIVE_INFINITY) return 0;
  if (degrees >= MANY_DEGREES) return normalBelow(-normalEquivalent(t, degrees));
  const [a, b] = [degrees / 2, 0.5];
  const share = shareOfSquare(t, degrees);
  const power = a * logOnePlusSquare(t, degrees);
  const scale = (halfStep(a) / Math.sqrt(Math.PI)) * Math.exp(-power) * Math.sqrt(share);
  if (share < (b + 1) / (a + b + 2)) return 0.5 - (scale / b / 2) * betaFraction(b, a, share);
  return (scale / a / 2) * betaFraction(a, b, 1 / (1 + (t / degrees) * t));
}

/** t²/(ν + t²), for t too great to be squared too. */
function shareOfSquare(t: number, degrees: number): number {
  return t > 1e150 ? 1 : (t * t) / (degrees + t * t);
}

/** ln(1 + t²/ν), for t too great to be squared too. */
function logOnePlusSquare(t: number, degrees: number): number {
  const size = Math.abs(t);
  if (size > 1e150) return 2 * Math.log(size) - Math.log(degrees);
  return Math.log1p((size / degrees) * size);
}

/**
 * Γ(a + ½)/Γ(a), by its asymptotic series from a = 20 on and the recurrence below that. The series
 * of the logarithm follows from Stirling's: Fields, Proceedings of the Edinburgh Mathematical
 * Society 15 (1966).
 */
function halfStep(a: number): number {
  let factor = 1;
  let at = a;
  for (; at < 20; at += 1) factor *= at / (at + 0.5);
  const s = 1 / (at * at);
  const series = -1 / 8 + s * (1 / 192 - s * (1 / 640 - s * (17 / 14336 - s * (31 / 18432))));
  return factor * Math.sqrt(at) * Math.exp(series / at);
}

/**
 * The z that has as much above it as `t` has: Hill, Algorithm 395, Communications of the ACM 13
 * (1970), an expansion in 1/ν.
 */
function normalEquivalent(t: number, degrees: number): number {
  if (degrees === Number.POSITIVE_INFINITY) return t;
  const a = degrees - 0.5;
  const b = 48 * a * a;
  const y = a * logOnePlusSquare(t, degrees);
  const second = (((-0.4 * y - 3.3) * y - 24) * y - 85.5) / (0.8 * y * y + 100 + b);
  return ((second + y + 3) / b + 1) * Math.sqrt(y);
}
