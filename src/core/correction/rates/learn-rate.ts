import { knownPass, type Pass } from './pass';
import { type Fineness, type Posterior, posteriorOf } from './posterior';
import { type PriorBasis, type RatePrior, refuseNoPrior } from './prior';
import { nextQuantiles, type Quantile, typicalQuantiles } from './quantiles';

/** A quantity with its middle, and what it lies between with a stated probability. */
export interface Range {
  readonly low: number;
  readonly median: number;
  readonly high: number;
}

/** How fast a shop cuts, as far as it is known. Rates in µm of wedge per second or per stroke. */
export interface LearnedRate {
  /** The shop's typical rate: half of its passes are slower. */
  readonly typical: Range;
  /** The rate of the next single pass, as it really is, not as it will read. */
  readonly next: Range;
  /** The rate that the next pass stays below with the probability `level`. */
  readonly upper: number;
  /** Middle of the scale of the scatter from pass to pass, in the logarithm of the rate. */
  readonly scatter: number;
  readonly level: number;
  /** How many passes it was learned from. */
  readonly passes: number;
  /** True where there was no pass to learn from. */
  readonly priorAlone: boolean;
  readonly basis: PriorBasis;
}

/** The probability that an interval holds its quantity, and that the next pass is below `upper`. */
const USUAL_LEVEL = 0.9;

/**
 * The rate of a shop from its measured passes, in any order. A pass i of the amount tᵢ took off the
 * wedge tᵢ·exp(xᵢ), read as wᵢ with the doubt uᵢ: wᵢ ~ N(tᵢ·exp(xᵢ), uᵢ²). The xᵢ scatter about the
 * typical rate, ln(typical), with a scale that is not known either; both have priors. All is
 * integrated numerically, without drawing lots: the same passes give the same rate.
 *
 * A pass that read the wrong way says that the rate is small, as strongly as its doubt allows. The
 * prior wears off with the passes; until then the answer leans on it.
 *
 * @param level probability of each interval, two-sided; 0.9 for 90 %.
 * @param fineness to reckon every place of a grid of one's own; left out, quantiles are right to 1e-3
 * of themselves.
 * @throws RangeError where a pass, the prior or the level is none.
 */
export function learnRate(
  passes: readonly Pass[],
  prior: RatePrior,
  level = USUAL_LEVEL,
  fineness?: Fineness,
): LearnedRate {
  if (!(level > 0 && level < 1)) throw new RangeError('A probability lies between 0 and 1');
  refuseNoPrior(prior);
  const posterior = posteriorOf(passes.map(knownPass), prior, fineness);
  const next = nextQuantiles(posterior, prior.tails);
  const within = (quantile: Quantile): Range => ({
    low: quantile((1 - level) / 2),
    median: quantile(0.5),
    high: quantile((1 + level) / 2),
  });
  return {
    typical: within(typicalQuantiles(posterior)),
    next: within(next),
    upper: next(level),
    scatter: middleScale(posterior),
    level,
    passes: passes.length,
    priorAlone: passes.length === 0,
    basis: prior.basis,
  };
}

/** The mean of the scale in its logarithm. */
function middleScale({ scales, weights }: Posterior): number {
  const logarithm = weights.reduce(
    (total, row, index) =>
      total + Math.log(scales[index]!) * row.reduce((sum, weight) => sum + weight, 0),
    0,
  );
  return Math.exp(logarithm);
}
