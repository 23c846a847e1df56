import { coverageFactor, type DoubtComponent } from './effective-degrees';

/** The part of cases that an expanded uncertainty is to cover: k is 2 where all is certain (GUM G.6.6). */
export const COVERAGE = 0.9545;

/** Expanded uncertainty U = k·u for about 95 %, in the unit of u (GUM 6.2, G.3). */
export function expanded({ standard, degreesOfFreedom }: DoubtComponent): number {
  return standard === 0 ? 0 : standard * coverageFactor(COVERAGE, degreesOfFreedom);
}

/** True where a value is smaller than its expanded uncertainty: not even its sign is sure. */
export function isWithinDoubt(estimate: DoubtComponent & { readonly value: number }): boolean {
  return Math.abs(estimate.value) < expanded(estimate);
}
