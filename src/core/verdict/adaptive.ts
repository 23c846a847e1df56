/*
 * The adaptive Monte Carlo procedure of JCGM 101:2008, 7.9: draws are made a batch at a time until
 * the results of the batches agree so well that the digits shown no longer change.
 */

/** JCGM 101, 7.9.4 b: 100/(1 - 0.95) at least, and at least this many. */
const BATCH = 10_000;

/**
 * JCGM 101 may stop at two batches, but two agree by chance too often (Wübbeler, Harris, Cox and
 * Elster, Metrologia 47, 2010, from memory).
 */
const LEAST_BATCHES = 5;

/** JCGM 101, 7.2.2, holds a million to be enough for a 95 % interval with one or two digits. */
export const MOST_DRAWS = 1_000_000;

/** A difference in the probability below which the verdict, in whole per cent, stays the same. */
const PROBABILITY_TOLERANCE = 0.005;

/** What draws of a quantity say of it. All but draws, probability and stable are in its unit. */
export interface Drawn {
  readonly draws: number;
  readonly mean: number;
  readonly standard: number;
  /** Ends of the probabilistically symmetric interval for 95 % (JCGM 101, 7.7). */
  readonly low: number;
  readonly high: number;
  /** Part of the draws that is no more than the limit. */
  readonly probability: number;
  /** False where the most draws were made before the digits stood still. */
  readonly stable: boolean;
}

type Summary = Omit<Drawn, 'draws' | 'stable'>;

/**
 * Draws until stable: twice the standard error of mean, standard uncertainty and ends of the
 * interval is no more than half of the second digit of the standard uncertainty (7.9.2), and that
 * of the probability no more than 0.005.
 *
 * @param fill makes a batch of draws.
 * @param centre a value near the draws: sums are taken from there, so that they lose no digits.
 */
export function drawUntilStable(
  fill: (batch: Float64Array) => void,
  limit: number,
  centre: number,
): Drawn {
  const all = new Float64Array(MOST_DRAWS);
  const batches: Summary[] = [];
  let draws = 0;
  let stable = false;
  while (!stable && draws < MOST_DRAWS) {
    const batch = all.subarray(draws, draws + BATCH);
    fill(batch);
    batches.push(summaryOf(batch.sort(), limit, centre));
    draws += BATCH;
    stable = batches.length >= LEAST_BATCHES && isStable(batches);
  }
  return { draws, ...summaryOf(all.subarray(0, draws).sort(), limit, centre), stable };
}

function isStable(batches: readonly Summary[]): boolean {
  const pooled = Math.sqrt(meanOf(batches.map(({ standard }) => standard * standard)));
  const tolerance = halfOfSecondDigit(pooled);
  const isWithin = (key: keyof Summary, within: number) =>
    2 * standardError(batches.map((batch) => batch[key])) <= within;
  return (
    isWithin('probability', PROBABILITY_TOLERANCE) &&
    (['mean', 'standard', 'low', 'high'] as const).every((key) => isWithin(key, tolerance))
  );
}

/** Half of one in the second significant digit of `standard`, once rounded (7.9.2); 0 of 0. */
function halfOfSecondDigit(standard: number): number {
  if (standard === 0) return 0;
  const exponent = Number(standard.toExponential(1).split('e')[1]);
  return 10 ** (exponent - 1) / 2;
}

function meanOf(values: readonly number[]): number {
  return values.reduce((total, value) => total + value, 0) / values.length;
}

/** Standard deviation of the mean of the batches (7.9.4 e). */
function standardError(values: readonly number[]): number {
  const mean = meanOf(values);
  const squares = values.reduce((total, value) => total + (value - mean) ** 2, 0);
  return Math.sqrt(squares / (values.length * (values.length - 1)));
}

/** @param sorted draws, least first. */
function summaryOf(sorted: Float64Array, limit: number, centre: number): Summary {
  const count = sorted.length;
  let sum = 0;
  let squares = 0;
  for (let i = 0; i < count; i += 1) {
    const off = sorted[i]! - centre;
    sum += off;
    squares += off * off;
  }
  const beyond = Math.round(count * 0.025);
  return {
    mean: centre + sum / count,
    standard: Math.sqrt(Math.max(0, squares - (sum * sum) / count) / (count - 1)),
    low: sorted[beyond - 1]!,
    high: sorted[count - beyond - 1]!,
    probability: countUpTo(sorted, limit) / count,
  };
}

/** How many of the sorted numbers are no more than `limit`. */
function countUpTo(sorted: Float64Array, limit: number): number {
  let from = 0;
  let to = sorted.length;
  while (from < to) {
    const middle = (from + to) >>> 1;
    if (sorted[middle]! <= limit) from = middle + 1;
    else to = middle;
  }
  return from;
}
