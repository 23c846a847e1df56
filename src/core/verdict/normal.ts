/*
 * The normal distribution, to double precision. Complementary error function by the series and the
 * continued fraction of Abramowitz and Stegun, Handbook of Mathematical Functions, 7.1.6 and 7.1.14.
 */

const SERIES_BELOW = 2.5;

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

/** A&S 7.1.14, worked from the far end; 60 steps are exact to rounding from x = 2.5 on. */
function complementaryErrorByFraction(x: number): number {
  let fraction = x;
  for (let n = 60; n >= 1; n -= 1) fraction = x + n / 2 / fraction;
  return Math.exp(-x * x) / Math.sqrt(Math.PI) / fraction;
}

/** Φ(z): the part of a standard normal distribution below `z`. */
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
  return normalBelow((high - mean) / standard) - normalBelow((low - mean) / standard);
}
