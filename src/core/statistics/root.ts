/** How far below 0 an increasing function is at a point, and how fast it rises there. */
export interface LogarithmicSlope {
  readonly value: number;
  /** Rise of the value per unit of ln x. */
  readonly slope: number;
}

const LEAST = 1e-307;
const GREATEST = 1e307;

/** A Newton step this small is the last one: each squares the error before it. */
const LAST_STEP = 1e-9;

/** A bracket this narrow, of itself, is all that rounding leaves. */
const NARROW = 4 * Number.EPSILON;

const MOST_STEPS = 400;

/**
 * The x > 0 where an increasing function is 0: Newton's method in ln x, kept inside a shrinking
 * bracket and halving it (in ln x) where a step would leave it. After Press et al., Numerical
 * Recipes, 9.4, a safe Newton-Raphson. The function may be ±∞ where it runs out of digits.
 *
 * @param start the first guess, above 0.
 * @throws RangeError where the root is not found: the function is not increasing or not a number.
 */
export function positiveRoot(of: (x: number) => LogarithmicSlope, start: number): number {
  let low = LEAST;
  let high = GREATEST;
  let x = Math.min(GREATEST, Math.max(LEAST, start));
  for (let count = 0; count < MOST_STEPS; count += 1) {
    const { value, slope } = of(x);
    if (Number.isNaN(value)) break;
    if (value === 0) return x;
    if (value > 0) high = x;
    else low = x;
    const step = -value / slope;
    const next = x * Math.exp(step);
    if (Math.abs(step) < LAST_STEP) return next;
    if (high - low <= NARROW * high) return x;
    x = next > low && next < high ? next : Math.sqrt(low) * Math.sqrt(high);
  }
  throw new RangeError('The root was not found');
}
