/**
 * The continued fraction of the incomplete beta function, NIST Digital Library of Mathematical
 * Functions 8.17.22, by Lentz's method (Thompson and Barnett, Journal of Computational Physics 64,
 * 1986): B_x(a, b) = xᵃ(1-x)ᵇ/a · this. It is quick for x < (a+1)/(a+b+2), in about
 * √max(a, b) steps at worst, and nothing in it vanishes; beyond that take the other tail.
 *
 * @param a above 0
 * @param b above 0
 * @param x from 0 to below 1
 */
export function betaFraction(a: number, b: number, x: number): number {
  let numerator = 1;
  let denominator = 1 / (1 - ((a + b) * x) / (a + 1));
  let total = denominator;
  const most = 200 + 20 * Math.sqrt(Math.max(a, b));
  for (let m = 1; m < most; m += 1) {
    const before = total;
    for (const part of partsOf(a, b, x, m)) {
      denominator = 1 / (1 + part * denominator);
      numerator = 1 + part / numerator;
      total *= denominator * numerator;
    }
    if (Math.abs(total - before) <= Number.EPSILON * total) break;
  }
  return total;
}

/** The partial numerators d₂ₘ and d₂ₘ₊₁. */
function partsOf(a: number, b: number, x: number, m: number): readonly [number, number] {
  const even = a + 2 * m;
  return [
    (m * (b - m) * x) / ((even - 1) * even),
    (-(a + m) * (a + b + m) * x) / (even * (even + 1)),
  ];
}
