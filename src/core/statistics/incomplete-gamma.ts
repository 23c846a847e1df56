/*
 * The regularised incomplete gamma function, by the series (NIST Digital Library of Mathematical
 * Functions 8.11.4) and the continued fraction (8.9.2, by Lentz's method), each where it
 * is quick: Press et al., Numerical Recipes, 6.2.
 */

/** Both parts of the gamma distribution with shape a: P below x and Q above it, P + Q = 1. */
export interface GammaParts {
  readonly below: number;
  readonly above: number;
}

/**
 * P(a, x) and Q(a, x), each right to 1e-13 of itself where it is the smaller one, for a up to 5e5.
 *
 * @param a shape, above 0
 * @param x from 0 up, Infinity too
 */
export function gammaParts(a: number, x: number): GammaParts {
  if (x === 0) return { below: 0, above: 1 };
  const term = gammaTerm(a, x);
  if (x < a + 1) {
    const below = term * series(a, x);
    return { below, above: 1 - below };
  }
  // Nothing is left above: the fraction need not be worked, and cannot where x is Infinity.
  const above = term === 0 ? 0 : term * a * fraction(a, x);
  return { below: 1 - above, above };
}

/** xᵃ·exp(-x)/Γ(a + 1), about the peak at x = a and so with no great numbers to cancel (Loader, 2000). */
export function gammaTerm(a: number, x: number): number {
  if (x === Number.POSITIVE_INFINITY) return 0;
  // Far below the peak 1 + (x - a)/a would lose the digits of x.
  const logRatio = x < a / 2 ? Math.log(x / a) : Math.log1p((x - a) / a);
  const deviance = x - a - a * logRatio;
  return Math.exp(-deviance - stirlingError(a)) / Math.sqrt(2 * Math.PI * a);
}

/** 1 + x/(a+1) + x²/((a+1)(a+2)) + … */
function series(a: number, x: number): number {
  let term = 1;
  let total = 1;
  for (let n = 1; term > total * 1e-17; n += 1) {
    term *= x / (a + n);
    total += term;
  }
  return total;
}

/** 1/(x+1-a - 1·(1-a)/(x+3-a - 2·(2-a)/(x+5-a - …))) */
function fraction(a: number, x: number): number {
  let lead = x + 1 - a;
  let denominator = 1 / lead;
  let numerator = Number.MAX_VALUE;
  let total = denominator;
  const most = 200 + 20 * Math.sqrt(a);
  for (let n = 1; n < most; n += 1) {
    const part = -n * (n - a);
    lead += 2;
    denominator = 1 / (part * denominator + lead);
    numerator = lead + part / numerator;
    const change = denominator * numerator;
    total *= change;
    if (Math.abs(change - 1) <= Number.EPSILON) break;
  }
  return total;
}

/**
 * What Stirling's formula leaves of ln Γ(a + 1): 1/(12a) - 1/(360a³) + … (A&S 6.1.41), from a = 15
 * on; below that by the recurrence a step up at a time.
 */
function stirlingError(a: number): number {
  let total = 0;
  let at = a;
  for (; at < 15; at += 1) total += (at + 0.5) * Math.log1p(1 / at) - 1;
  const s = 1 / (at * at);
  const tail = 1 / 12 - s * (1 / 360 - s * (1 / 1260 - s * (1 / 1680 - s / 1188)));
  return total + tail / at;
}
