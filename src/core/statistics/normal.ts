/*
 * The normal distribution. Complementary error function by the series and the continued fraction
 * of Abramowitz and Stegun, Handbook of Mathematical Functions, 7.1.6 and 7.1.14; quantile by
 * their 26.2.23, polished with Halley's method.
 */

/** Beyond this the continued fraction keeps more digits of a small tail than 1 - series does. */
const SERIES_BELOW = 2;

/** erfc(x) = 2/√π ∫ₓ^∞ exp(-t²) dt. */
function complementaryError(x: number): number {
  if (x < 0) return 2 - complementaryError(-x);
  return x < SERIES_BELOW ? 1 - errorBySeries(x) : complementaryErrorByFraction(x);
}

/** A&S 7.1.6: erf x = 2/√π · exp(-x²) Σ 2ⁿ x²ⁿ⁺¹ / (1·3·…·(2n+1)). */
function errorBySeries(x: number): number {
  let term = x;
  let total = x;
  for (let n = 1; term > total * 1e-17; n += 1) {
    term *= (2 * x * x) / (2 * n + 1);
    total += term;
  }
  return (2 / Math.sqrt(Math.PI)) * Math.exp(-x * x) * total;
}

/** A&S 7.1.14, worked from the far end; 60 steps are exact to rounding from x = 2 on. */
function complementaryErrorByFraction(x: number): number {
  let fraction = x;
  for (let n = 60; n >= 1; n -= 1) fraction = x + n / 2 / fraction;
  return Math.exp(-x * x) / Math.sqrt(Math.PI) / fraction;
}

/**
 * Φ(z): the part of a standard normal distribution below `z`, any real number. Right to 3e-16, and
 * to 1e-12 of itself in the lower tail down to z = -37.
 */
export function normalBelow(z: number): number {
  return complementaryError(-z / Math.SQRT2) / 2;
}

/** φ(z): the density of the standard normal distribution at `z`. */
export function normalDensity(z: number): number {
  return Math.exp((-z * z) / 2) / Math.sqrt(2 * Math.PI);
}

/** The part of a normal distribution that lies between `low` and `high`; with no spread, 0 or 1. */
export function normalBetween(low: number, high: number, mean: number, standard: number): number {
  if (high < low) return 0;
  if (standard === 0) return low <= mean && mean <= high ? 1 : 0;
  const from = (low - mean) / standard;
  const to = (high - mean) / standard;
  // In the upper tail both parts below are near 1: the lower tail, its mirror image, keeps digits.
  return from > 0 ? normalBelow(-from) - normalBelow(-to) : normalBelow(to) - normalBelow(from);
}

/**
 * Φ⁻¹(p): the z below which `part` of a standard normal distribution lies. Right to 1e-14 of itself
 * or 1e-16, for 1e-300 ≤ part ≤ ½; above ½ as far as 1 - part can be told.
 *
 * @throws RangeError where `part` is not between 0 and 1.
 */
export function normalQuantile(part: number): number {
  if (!(part > 0 && part < 1)) throw new RangeError('A part lies between 0 and 1');
  if (part > 0.5) return -normalQuantile(1 - part);
  let z = roughQuantile(part);
  // 4.5e-4 becomes below 1e-9, and that rounding.
  for (let step = 0; step < 2; step += 1) {
    const off = (normalBelow(z) - part) / normalDensity(z);
    z -= off / (1 + (z * off) / 2);
  }
  return z;
}

/** A&S 26.2.23: right to 4.5e-4 for 0 < part ≤ ½. */
function roughQuantile(part: number): number {
  const t = Math.sqrt(-2 * Math.log(part));
  const above = 2.515517 + t * (0.802853 + t * 0.010328);
  const below = 1 + t * (1.432788 + t * (0.189269 + t * 0.001308));
  return above / below - t;
}
