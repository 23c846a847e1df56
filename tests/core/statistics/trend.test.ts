import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { leastTrendProbability, trendOf } from '../../../src/core/statistics/trend';
import { expectClose } from '../support/close';

/** A worked example of the test found in a public course: 72 pairs rise, 18 fall, 1 is alike. */
const COURSE = [
  12.9, 14.8, 13.2, 15.7, 13.8, 15.6, 12.9, 11.0, 17.3, 15.9, 19.0, 18.3, 20.1, 21.7,
] as const;

/** Kendall's table of the probability of S or more, as in Gilbert (1987), Table A18; from memory. */
const TABLE_A18 = [
  [4, 4, 0.167],
  [4, 6, 0.042],
  [5, 6, 0.117],
  [5, 8, 0.042],
  [8, 16, 0.031],
  [9, 18, 0.038],
  [10, 21, 0.036],
] as const;

/** Whole numbers from 0 in an order with the S that is asked for. */
function orderWith(count: number, statistic: number): readonly number[] {
  const order = Array.from({ length: count }, (_, index) => index);
  let wanted = ((count * (count - 1)) / 2 - statistic) / 2;
  for (let round = 0; round < count; round += 1) {
    for (let index = 0; index + 1 < count && wanted > 0; index += 1) {
      if (order[index]! < order[index + 1]!) {
        [order[index], order[index + 1]] = [order[index + 1]!, order[index]!];
        wanted -= 1;
      }
    }
  }
  return order;
}

function ordersOf(values: readonly number[]): readonly (readonly number[])[] {
  if (values.length === 0) return [[]];
  return values.flatMap((first, index) =>
    ordersOf(values.toSpliced(index, 1)).map((rest) => [first, ...rest]),
  );
}

describe('the test of a trend', () => {
  it('has the statistic of the worked example, and about its probability', () => {
    const { statistic, probability } = trendOf(COURSE);
    expect(statistic).toBe(54);
    // The example takes the normal distribution: 0.0018 to one side.
    expectClose(probability / 2, 0.0018, { absolute: 0.001 });
  });

  it.each(TABLE_A18)(
    'of %d numbers with S = %d has the tabulated probability %d',
    (count, statistic, probability) => {
      const trend = trendOf(orderWith(count, statistic));
      expect(trend.statistic).toBe(statistic);
      expectClose(trend.probability / 2, probability, { absolute: 0.0006 });
    },
  );

  it.each([1, 2, 3, 4, 5, 6, 7])('of %d numbers is exact over all their orders', (count) => {
    const orders = ordersOf(Array.from({ length: count }, (_, index) => index));
    const trends = orders.map(trendOf);
    for (const { statistic, probability } of trends) {
      const asMuch = trends.filter((one) => Math.abs(one.statistic) >= Math.abs(statistic)).length;
      expectClose(probability, asMuch / orders.length, { absolute: 1e-12 });
    }
  });

  it('turns round with the numbers, and knows nothing of their size', () => {
    fc.assert(
      fc.property(fc.array(fc.integer(), { minLength: 1, maxLength: 30 }), (values) => {
        const trend = trendOf(values);
        const back = trendOf(values.toReversed());
        expect(back.statistic + trend.statistic).toBe(0);
        expect(back.probability).toBe(trend.probability);
        expect(trendOf(values.map((value) => value ** 3 + value))).toEqual(trend);
      }),
    );
  });

  it('has a least probability: 2 of all orders', () => {
    expectClose(leastTrendProbability(4), 2 / 24);
    expectClose(leastTrendProbability(5), 2 / 120);
    expect(leastTrendProbability(1)).toBe(1);
    expect(leastTrendProbability(0)).toBe(1);
  });

  it('takes the lesser S where a pair alike leaves one that no order has', () => {
    // 1 2 2 3 has S = 5, between 4 and 6.
    expect(trendOf([1, 2, 2, 3]).statistic).toBe(5);
    expect(trendOf([1, 2, 2, 3]).probability).toBe(trendOf([1, 2, 4, 3]).probability);
  });

  it('of numbers all alike is none', () => {
    expect(trendOf([3, 3, 3, 3, 3, 3])).toEqual({ statistic: 0, probability: 1 });
  });

  it('is refused with a number that is none', () => {
    expect(() => trendOf([1, Number.NaN])).toThrow(RangeError);
  });
});
