import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { LearnedRate } from '../../src/core/correction/rates/learn-rate';
import {
  nextPassInWords,
  rateBasisInWords,
  rateInWords,
  typicalInWords,
} from '../../src/words/work';

it('a rate is told for ten seconds or strokes, with its expanded uncertainty', () => {
  const rate = {
    ...{ amount: 45, value: 0.0405 },
    ...{ standard: 0.0301, degreesOfFreedom: Number.POSITIVE_INFINITY },
  };
  expect(rateInWords(rate, 'seconds', 'µm')).toBe('0.41 ± 0.60 µm in 10 seconds');
  expect(rateInWords({ ...rate, value: -0.0405 }, 'strokes', 'µm')).toBe(
    '−0.41 ± 0.60 µm in 10 strokes',
  );
});

const LEARNED: LearnedRate = {
  typical: { low: 0.0907, median: 0.3464, high: 1.3224 },
  next: { low: 0.05, median: 0.35, high: 2 },
  upper: 1.5,
  scatter: 0.3,
  level: 0.9,
  passes: 0,
  priorAlone: true,
  basis: 'common practice',
};

describe('a rate that was learned', () => {
  it('is told for ten seconds or strokes, by its middle and what it lies between', () => {
    expect(typicalInWords(LEARNED, 'seconds', 'µm')).toBe('3.46 µm (0.91 to 13.22) in 10 seconds');
    expect(typicalInWords(LEARNED, 'strokes', 'tenths')).toBe(
      '1.36 tenths (0.36 to 5.21) in 10 strokes',
    );
  });

  it('says that no pass tells it yet, and what it is from then', () => {
    expect(rateBasisInWords(LEARNED)).toBe(
      'No pass of yours tells it yet: from common practice (no source) for aluminium on P320 to P400.',
    );
    expect(rateBasisInWords({ ...LEARNED, basis: 'other material or abrasive' })).toBe(
      'No pass of yours tells it yet: from common practice for aluminium (no source), taken wide: there is none for this material and abrasive.',
    );
  });

  it('counts the passes that it is from, and tells what they began from', () => {
    const from = (passes: number) => rateBasisInWords({ ...LEARNED, passes, priorAlone: false });
    expect(from(1)).toBe(
      'From one pass of yours, begun from common practice (no source) for aluminium on P320 to P400.',
    );
    expect(from(2)).toMatch(/^From 2 passes of yours, begun from common practice /);
    const other = { ...LEARNED, passes: 7, priorAlone: false };
    expect(rateBasisInWords({ ...other, basis: 'other material or abrasive' })).toMatch(
      /^From 7 passes of yours, begun from .* there is none for this material and abrasive/,
    );
  });
});

describe('the next pass', () => {
  const removal = { low: 0.3, median: 1.2, high: 2.4 };
  const firstOf = (amount: number, per: 'seconds' | 'strokes') =>
    /^First (.*?), then/.exec(nextPassInWords({ amount, removal }, per, 'µm'))?.[1];

  it('is told by how long it is and what that likely takes off', () => {
    // Of 12.7 s a hand keeps to 12: 12/12.7 of what they would take.
    expect(nextPassInWords({ amount: 12.7, removal }, 'seconds', 'µm')).toBe(
      'First 12 seconds, then measure again. Likely that takes off 1.13 µm (0.28 to 2.27): 9 times in 10 no more than is wanted.',
    );
    expect(nextPassInWords({ amount: 1, removal }, 'strokes', 'tenths')).toMatch(
      /^First 1 stroke, .* takes off 0\.47 tenths \(0\.12 to 0\.94\): /,
    );
  });

  it.each([
    [1, '1 second', '1 stroke'],
    [1.49, '1 second', '1 stroke'],
    [1.5, '1.5 seconds', '1 stroke'],
    [2.99, '2.5 seconds', '2 strokes'],
    [9.99, '9.5 seconds', '9 strokes'],
    [10.9, '10 seconds', '10 strokes'],
    [123.4, '123 seconds', '123 strokes'],
  ])('of %d is %s, or %s', (amount, seconds, strokes) => {
    expect(firstOf(amount, 'seconds')).toBe(seconds);
    expect(firstOf(amount, 'strokes')).toBe(strokes);
  });

  it('is never told longer than it is, nor shorter by a half, or one from 10 on', () => {
    fc.assert(
      fc.property(fc.double({ min: 1, max: 5000, noNaN: true }), (amount) => {
        const told = Number.parseFloat(firstOf(amount, 'seconds') ?? '');
        expect(told).toBeLessThanOrEqual(amount);
        expect(amount - told).toBeLessThan(amount < 10 ? 0.5 : 1);
      }),
    );
  });

  it.each([0.001, 0.99])('of %d is too short for a hand', (amount) => {
    expect(nextPassInWords({ amount, removal }, 'strokes', 'µm')).toMatch(/^Even one stroke may /);
    expect(nextPassInWords({ amount, removal }, 'seconds', 'µm')).toMatch(/^Even one second may /);
  });
});
