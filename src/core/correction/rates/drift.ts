import { leastTrendProbability, trendOf } from '../../statistics/trend';
import type { LearnedRate } from './learn-rate';
import { type KnownPass, knownPass, type Pass } from './pass';

/** Whether a shop's passes become slower or faster, as paper does that wears or clogs. */
export interface Drift {
  readonly sense: 'slower' | 'faster' | 'none';
  /** How often passes that do not drift look at least as much like it. */
  readonly probability: number;
  /** How many passes were looked at. */
  readonly passes: number;
}

const USUAL_SIGNIFICANCE = 0.05;

/** Passes before this many say nothing of the paper in use. */
const MOST_PASSES = 100;

/**
 * Whether `passes`, in the order they were made, drift: the test of Mann and Kendall on how far each
 * wedge lies off what was to be expected at the typical rate, over what doubt and scatter make of
 * it, so that a short pass of which little is known is not taken for a fast or a slow one.
 *
 * @returns undefined where the passes are too few to show a drift at all, fewer than 5 at 0.05.
 * @throws RangeError where a pass is none or the significance is not between 0 and 1.
 */
export function driftOf(
  passes: readonly Pass[],
  { typical, scatter }: Pick<LearnedRate, 'typical' | 'scatter'>,
  significance = USUAL_SIGNIFICANCE,
): Drift | undefined {
  if (!(significance > 0 && significance < 1)) {
    throw new RangeError('A significance lies between 0 and 1');
  }
  const known = passes.map(knownPass).slice(-MOST_PASSES);
  if (leastTrendProbability(known.length) > significance) return undefined;
  const { statistic, probability } = trendOf(
    known.map((pass) => departure(pass, typical.median, scatter)),
  );
  const drifts = probability <= significance;
  const sense = statistic < 0 ? 'slower' : 'faster';
  return { sense: drifts ? sense : 'none', probability, passes: known.length };
}

function departure({ amount, wedge, doubt }: KnownPass, rate: number, scatter: number): number {
  const expected = amount * rate;
  return (wedge - expected) / Math.hypot(doubt, expected * scatter);
}
