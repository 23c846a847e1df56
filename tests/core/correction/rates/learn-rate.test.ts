import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { learnRate, type Range } from '../../../../src/core/correction/rates/learn-rate';
import type { Pass } from '../../../../src/core/correction/rates/pass';
import type { RatePrior } from '../../../../src/core/correction/rates/prior';
import { randomFrom } from '../../../../src/core/statistics/random';
import { expectClose } from '../../support/close';
import { byBruteForce } from './support/brute-force';
import { goodPasses, pass, shopFrom, USUAL } from './support/shops';

/** Φ⁻¹(0.95). */
const Z = 1.6448536269514722;

/** Fails where a quantile is further off than `relative`. */
function expectRange(actual: Range, expected: Range, relative: number): void {
  expectClose(actual.low, expected.low, { relative });
  expectClose(actual.median, expected.median, { relative });
  expectClose(actual.high, expected.high, { relative });
}

/** Between exp(middle ± spread·z). */
function logNormal(middle: number, spread: number): Range {
  const at = (z: number) => Math.exp(middle + z * spread);
  return { low: at(-Z), median: at(0), high: at(Z) };
}

/** How many times wider than its low end an interval is, in the logarithm. */
function width({ low, high }: Range): number {
  return Math.log(high / low);
}

describe('the learned rate in closed form', () => {
  // Normal scatter of a known scale, wedges known for certain: the prior and n logarithms of rates
  // are all normal, and the precisions add up.
  const prior: RatePrior = { ...USUAL, scatter: [0.3, 0.3], tails: 'normal' };

  it.each([0, 1, 2, 5, 12, 40, 100])('after %d passes is that of normal distributions', (count) => {
    const passes = Array.from({ length: count }, (_, index) =>
      pass(1000 + 10 * index, 400 * Math.exp(0.4 * Math.sin(index)), 0),
    );
    const logarithms = passes.map(({ amount, wedge }) => Math.log(wedge / amount));
    const [ofPrior, ofPass] = [USUAL.logStandard ** -2, 0.3 ** -2];
    const precision = ofPrior + count * ofPass;
    const sum = logarithms.reduce((total, one) => total + one, 0);
    const middle = (ofPrior * Math.log(USUAL.median) + ofPass * sum) / precision;

    const learned = learnRate(passes, prior);
    expectRange(learned.typical, logNormal(middle, precision ** -0.5), 2e-4);
    expectRange(learned.next, logNormal(middle, Math.hypot(precision ** -0.5, 0.3)), 2e-5);
    expectClose(
      learned.upper,
      Math.exp(middle + 1.2815515655446004 * Math.hypot(precision ** -0.5, 0.3)),
      { relative: 2e-5 },
    );
    expectClose(learned.scatter, 0.3);
  });
});

describe('the learned rate against a quadrature without devices', () => {
  it.each<[string, readonly Pass[]]>([
    ['no pass', []],
    ['a pass', [pass(20, 6)]],
    ['a pass that is less than its doubt', [pass(20, 0.3, 1)]],
    ['a pass that read as nothing', [pass(20, 0, 1)]],
    ['a pass the wrong way', [pass(20, -2, 1)]],
    ['passes that agree', goodPasses(5)],
    ['a pass that does not', [...goodPasses(4), pass(200, 6)]],
    ['good ones and bad ones', [pass(10, 3, 0.3), pass(30, 5, 3), pass(5, -1, 2), pass(40, 20, 3)]],
    ['a pass close to where its likelihood is cut', [pass(20, 5.01, 1), pass(20, 4.99, 1)]],
  ])('after %s', (_, passes) => {
    const learned = learnRate(passes, USUAL);
    const expected = byBruteForce(passes, USUAL);
    expectRange(learned.typical, expected.typical, 1e-3);
    expectRange(learned.next, expected.next, 1e-3);
  });

  it('after many passes is that of a grid where each place is reckoned', () => {
    const random = randomFrom(3);
    for (const [count, standard] of [
      [13, 1],
      [40, 0.3],
      [40, 4],
      [100, 1],
    ] as const) {
      const shop = shopFrom(USUAL, random);
      const passes = Array.from({ length: count }, () => {
        const amount = (5 / shop.rate) * (0.5 + 2 * random.even());
        return pass(amount, amount * shop.next() + standard * random.normal(), standard);
      });
      const learned = learnRate(passes, USUAL);
      const finer = learnRate(passes, USUAL, 0.9, { middles: 161, scales: 40 });
      expectRange(learned.typical, finer.typical, 1e-3);
      expectRange(learned.next, finer.next, 1e-3);
      expectClose(learned.scatter, finer.scatter, { relative: 1e-3 });
    }
  });
});

describe('the learned rate', () => {
  const amount = fc.double({ min: 1, max: 1000, noNaN: true });
  const wedge = fc.double({ min: -20, max: 50, noNaN: true });
  const standard = fc.double({ min: 0.05, max: 10, noNaN: true });
  const passes = fc.array(
    fc.tuple(amount, wedge, standard).map(([t, w, u]) => pass(t, w, u)),
    { maxLength: 16 },
  );
  const few = { numRuns: 40 };

  it('does not depend on the order of the passes', () => {
    fc.assert(
      fc.property(passes, (some) => {
        const [here, there] = [some, some.toReversed()].map((one) => learnRate(one, USUAL));
        expectRange(here!.typical, there!.typical, 1e-9);
        expectRange(here!.next, there!.next, 1e-9);
      }),
      few,
    );
  });

  it('goes with the unit of time', () => {
    fc.assert(
      fc.property(passes, fc.double({ min: 1e-4, max: 1e4, noNaN: true }), (some, seconds) => {
        const here = learnRate(some, USUAL);
        const there = learnRate(
          some.map((one) => ({ ...one, amount: one.amount / seconds })),
          { ...USUAL, median: USUAL.median * seconds },
        );
        expectClose(there.typical.low, here.typical.low * seconds, { relative: 1e-6 });
        expectClose(there.upper, here.upper * seconds, { relative: 1e-6 });
        expectClose(there.scatter, here.scatter, { relative: 1e-6 });
      }),
      few,
    );
  });

  it('is a rate above 0 with its quantiles in order, whatever was read', () => {
    const any = fc.array(
      fc
        .tuple(
          fc.double({ min: 1e-3, max: 1e5, noNaN: true }),
          fc.double({ min: -1e4, max: 1e4, noNaN: true }),
          fc.double({ min: 0, max: 1e4, noNaN: true }),
        )
        .map(([t, w, u]) => pass(t, w, u)),
      { maxLength: 30 },
    );
    fc.assert(
      fc.property(any, (some) => {
        const { typical, next, upper, scatter } = learnRate(some, USUAL);
        const rising = [0, next.low, typical.low, typical.median, typical.high, next.high];
        expect(rising.every((one, index) => index === 0 || one > rising[index - 1]!)).toBe(true);
        expect(Number.isFinite(next.high)).toBe(true);
        expect(upper).toBeGreaterThan(next.median);
        expect(upper).toBeLessThan(next.high);
        expect(scatter).toBeGreaterThanOrEqual(0.1);
        expect(scatter).toBeLessThanOrEqual(1);
      }),
      { numRuns: 100 },
    );
  });

  it('says whether it is the prior alone, and of how many passes it speaks', () => {
    expect(learnRate([], USUAL)).toMatchObject({ passes: 0, priorAlone: true, level: 0.9 });
    const learned = learnRate(goodPasses(3), USUAL, 0.5);
    expect(learned).toMatchObject({ passes: 3, priorAlone: false, level: 0.5 });
  });

  it('is the prior where no pass has been', () => {
    const middle = Math.log(USUAL.median);
    expectRange(learnRate([], USUAL).typical, logNormal(middle, USUAL.logStandard), 2e-4);
  });

  it('is known the better the more passes there are', () => {
    const widths = [0, 1, 2, 4, 8, 16, 32, 64].map((count) =>
      width(learnRate(goodPasses(count), USUAL).typical),
    );
    expect(widths).toEqual(widths.toSorted((one, other) => other - one));
    expect(widths[7]! / widths[0]!).toBeLessThan(0.03);
  });

  it('is known the better the smaller the level, about the same middle', () => {
    const [wide, narrow] = [0.95, 0.5].map((level) => learnRate(goodPasses(4), USUAL, level));
    expect(width(narrow!.typical)).toBeLessThan(width(wide!.typical) / 2);
    expectClose(narrow!.typical.median, wide!.typical.median);
    expect(narrow!.upper).toBeLessThan(wide!.upper);
  });

  it('is small after a pass the wrong way, the surer the smaller', () => {
    const medianAfter = (standard: number) =>
      learnRate([...goodPasses(2), pass(200, -1, standard)], USUAL).typical.median;
    const without = learnRate(goodPasses(2), USUAL).typical.median;
    expect(medianAfter(30)).toBeLessThan(without);
    expect(medianAfter(3)).toBeLessThan(medianAfter(30));
    expect(medianAfter(1000)).toBeGreaterThan(0.97 * without);
  });

  it('does not believe a doubt from few repeats as it does one that is certain', () => {
    const certain = pass(20, 6, 3);
    const judged = { ...certain, degreesOfFreedom: 2 };
    expect(width(learnRate([judged], USUAL).typical)).toBeGreaterThan(
      width(learnRate([certain], USUAL).typical),
    );
  });
});

describe('a pass ten times off, by a slip in its seconds', () => {
  const good = learnRate(goodPasses(10), USUAL);

  it.each([200, 2])('of %d s hardly moves what ten passes have shown', (amount) => {
    const learned = learnRate([...goodPasses(10), pass(amount, 6)], USUAL);
    expectClose(learned.typical.median, good.typical.median, { relative: 0.05 });
    expect(width(learned.typical)).toBeLessThan(1.5 * width(good.typical));
    expectClose(learned.upper, good.upper, { relative: 0.2 });
  });

  it('would be followed by a normal scatter', () => {
    const normal: RatePrior = { ...USUAL, tails: 'normal' };
    const learned = learnRate([...goodPasses(10), pass(200, 6)], normal);
    expect(learned.typical.median).toBeLessThan(0.87 * good.typical.median);
    expect(width(learned.typical)).toBeGreaterThan(3 * width(good.typical));
  });
});

describe('what is refused', () => {
  it.each([
    ['no work', { amount: 0 }],
    ['work below 0', { amount: -1 }],
    ['endless work', { amount: Number.POSITIVE_INFINITY }],
    ['work that is no number', { amount: Number.NaN }],
    ['a wedge that is no number', { wedge: Number.NaN }],
    ['a doubt below 0', { standard: -1 }],
    ['a doubt that is no number', { standard: Number.NaN }],
    ['endless doubt', { standard: Number.POSITIVE_INFINITY }],
    ['no degrees of freedom', { degreesOfFreedom: 0 }],
  ])('is a pass with %s', (_, wrong) => {
    expect(() => learnRate([{ ...pass(20, 6), ...wrong }], USUAL)).toThrow(RangeError);
  });

  it.each([
    { median: 0 },
    { median: Number.NaN },
    { logStandard: 0 },
    { logStandard: Number.POSITIVE_INFINITY },
    { scatter: [0, 1] as const },
    { scatter: [1, 0.5] as const },
    { scatter: [0.1, Number.NaN] as const },
  ])('is a prior with %o', (wrong) => {
    expect(() => learnRate([], { ...USUAL, ...wrong })).toThrow(RangeError);
  });

  it.each([0, 1, -0.1, Number.NaN])('is a level of %d', (level) => {
    expect(() => learnRate([], USUAL, level)).toThrow(RangeError);
  });
});
