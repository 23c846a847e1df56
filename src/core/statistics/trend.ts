/** Whether numbers rise or fall in the order they came. */
export interface Trend {
  /** Pairs of which the later is greater, less those of which it is smaller. */
  readonly statistic: number;
  /** How often numbers without a trend show at least as much of one, up or down. */
  readonly probability: number;
}

/**
 * The test of Mann, Econometrica 13 (1945), with Kendall's S and its exact distribution: no more is
 * taken for granted than that without a trend every order is as likely as another. Two numbers
 * alike count for neither; the probability is then a little too high.
 *
 * @throws RangeError where a number is not finite.
 */
export function trendOf(values: readonly number[]): Trend {
  if (!values.every(Number.isFinite)) throw new RangeError('A number is not finite');
  let statistic = 0;
  values.forEach((later, index) => {
    for (let before = 0; before < index; before += 1) {
      statistic += Math.sign(later - values[before]!);
    }
  });
  return { statistic, probability: Math.min(1, 2 * atLeast(values.length, Math.abs(statistic))) };
}

/** The least probability that `count` numbers can show: all of them in order. */
export function leastTrendProbability(count: number): number {
  return trendOf(Array.from({ length: count }, (_, index) => index)).probability;
}

/** The part of all orders of `count` numbers whose S is `statistic` or more. */
function atLeast(count: number, statistic: number): number {
  const most = (count * (count - 1)) / 2;
  // Each pair out of order takes 2 off S. Between two that orders can have, the lesser counts.
  const inversions = Math.ceil((most - statistic) / 2);
  return partsByInversions(count)
    .slice(0, inversions + 1)
    .reduce((total, part) => total + part, 0);
}

/**
 * The part of all orders of `count` numbers that has 0, 1, 2 … pairs out of order. Setting the n-th
 * number among the others adds 0 to n - 1 such pairs, each as likely as another.
 */
function partsByInversions(count: number): readonly number[] {
  let parts = [1];
  for (let n = 2; n <= count; n += 1) {
    const next: number[] = [];
    let window = 0;
    for (let inversions = 0; inversions < parts.length + n - 1; inversions += 1) {
      window += (parts[inversions] ?? 0) - (parts[inversions - n] ?? 0);
      next.push(window / n);
    }
    parts = next;
  }
  return parts;
}
