import type { Estimate } from './adjustment';

/** The estimate times a number that is known for certain, with its budget and terms. */
export function scaledEstimate(estimate: Estimate, factor: number): Estimate {
  const size = Math.abs(factor);
  return {
    ...estimate,
    value: estimate.value * factor,
    standard: estimate.standard * size,
    contributions: estimate.contributions.map((contribution) => ({
      ...contribution,
      standard: contribution.standard * size,
    })),
    terms: estimate.terms.map((term) => ({ ...term, weight: term.weight * factor })),
  };
}
