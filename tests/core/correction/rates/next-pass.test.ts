import { describe, expect, it } from 'vitest';
import { learnRate } from '../../../../src/core/correction/rates/learn-rate';
import { nextPass } from '../../../../src/core/correction/rates/next-pass';
import { randomFrom } from '../../../../src/core/statistics/random';
import { expectClose } from '../../support/close';
import { goodPasses, shopFrom, USUAL } from './support/shops';

describe('the next pass', () => {
  const learned = learnRate(goodPasses(6), USUAL);

  it('is as long as the upper rate needs for the wedge', () => {
    const { amount, removal } = nextPass(12, learned);
    expectClose(amount * learned.upper, 12);
    expectClose(removal.low, amount * learned.next.low);
    expectClose(removal.median, amount * learned.next.median);
    expectClose(removal.high, amount * learned.next.high);
    // Of the upper 95 % and the upper 90 % only the former overshoots.
    expect(removal.high).toBeGreaterThan(12);
    expect(removal.median).toBeLessThan(12);
  });

  it('is twice as long for twice the wedge', () => {
    expectClose(nextPass(24, learned).amount, 2 * nextPass(12, learned).amount);
  });

  it('is bolder the more is known', () => {
    const takes = [0, 2, 8, 50].map(
      (count) => nextPass(10, learnRate(goodPasses(count), USUAL)).removal.median,
    );
    expect(takes).toEqual(takes.toSorted((one, other) => one - other));
    expect(takes[0]).toBeLessThan(3.5);
    expect(takes[3]).toBeGreaterThan(7);
  });

  it('is the first one where nothing was measured yet: about 8 s for 10 µm', () => {
    // By hand, as if the scatter were normal: exp(1.2816·hypot(0.8144, s·√2)) with s about 0.32
    // is 3.3 times the middle of 0.346 µm/s.
    const { amount, removal } = nextPass(10, learnRate([], USUAL));
    expect(amount).toBeGreaterThan(7.5);
    expect(amount).toBeLessThan(9);
    expectClose(removal.median, amount * 0.3464, { relative: 1e-3 });
  });

  it.each([0, -1, Number.NaN, Number.POSITIVE_INFINITY])('is refused for %d µm', (wedge) => {
    expect(() => nextPass(wedge, learned)).toThrow(RangeError);
  });
});

/*
 * Shops drawn from the prior put a wedge right, pass by pass: each reads what is left and works as
 * long as it is told. Then the true rate must lie in its 90 % interval in 90 % of shops, and 10 % of
 * passes must take off more than was asked for.
 */
const SHOPS = 600;
const PASSES = 3;

/** What one shop came to. */
function shopAtWork(seed: number) {
  const random = randomFrom(seed);
  const shop = shopFrom(USUAL, random);
  const standard = 0.5 + 2 * random.even();
  const passes = [];
  const overshot = [];
  for (let count = 0; count < PASSES; count += 1) {
    const wedge = 4 + 20 * random.even();
    const { amount, removal } = nextPass(wedge, learnRate(passes, USUAL));
    const taken = amount * shop.next();
    overshot.push(taken > wedge);
    passes.push({
      amount,
      wedge: taken + standard * random.normal(),
      standard,
      degreesOfFreedom: Number.POSITIVE_INFINITY,
      within: removal.low <= taken && taken <= removal.high,
    });
  }
  const { low, high } = learnRate(passes, USUAL).typical;
  return {
    overshot,
    within: passes.map((one) => one.within),
    holds: low <= shop.rate && shop.rate <= high,
  };
}

describe('over many shops', () => {
  const shops = Array.from({ length: SHOPS }, (_, index) => shopAtWork(1000 + index));
  const part = (marks: readonly boolean[]) => marks.filter(Boolean).length / marks.length;
  /** Three standard deviations of a part of `count`. */
  const within = (expected: number, count: number) => ({
    absolute: 3 * Math.sqrt((expected * (1 - expected)) / count),
  });

  it('the interval of the typical rate holds the true rate 90 % of the time', () => {
    expectClose(part(shops.map(({ holds }) => holds)), 0.9, within(0.9, SHOPS));
  });

  it('a pass overshoots 10 % of the time, the first as the last', () => {
    for (let count = 0; count < PASSES; count += 1) {
      const overshot = part(shops.map((shop) => shop.overshot[count]!));
      expectClose(overshot, 0.1, within(0.1, SHOPS));
    }
    const all = shops.flatMap(({ overshot }) => overshot);
    expectClose(part(all), 0.1, within(0.1, all.length));
  });

  it('a pass takes off what was foretold 90 % of the time', () => {
    const all = shops.flatMap((shop) => shop.within);
    expectClose(part(all), 0.9, within(0.9, all.length));
  });
});
