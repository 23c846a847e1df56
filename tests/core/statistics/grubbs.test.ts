import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { grubbsExtreme, grubbsLimit } from '../../../src/core/statistics/outliers';
import { expectClose } from '../support/close';
import { known } from '../support/known';
import { BOTH_SIDES_5, ONE_SIDED_1, ONE_SIDED_5, ROSNER, URANIUM } from './reference/grubbs';

/** To `decimals`, the rest cut off, as some tables do. */
function cut(value: number, decimals: number): string {
  return (Math.floor(value * 10 ** decimals) / 10 ** decimals).toFixed(decimals);
}

describe("critical values of Grubbs' test", () => {
  it('one-sided, 5 %, 3 to 20 readings: the printed table', () => {
    expect(ONE_SIDED_5).toHaveLength(18);
    ONE_SIDED_5.forEach((printed, place) => {
      expectClose(grubbsLimit(place + 3, 0.05, 'one'), printed, { absolute: 6e-5 });
    });
  });

  it('both sides, 5 %, and one side, 1 %, 3 to 30 readings: another library', () => {
    expect([BOTH_SIDES_5.length, ONE_SIDED_1.length]).toEqual([28, 28]);
    BOTH_SIDES_5.forEach((derived, place) => {
      expectClose(grubbsLimit(place + 3, 0.05), derived, { absolute: 5.1e-7 });
    });
    ONE_SIDED_1.forEach((derived, place) => {
      expectClose(grubbsLimit(place + 3, 0.01, 'one'), derived, { absolute: 5.1e-7 });
    });
  });

  it('grow with the number of readings, and never reach (n-1)/√n', () => {
    fc.assert(
      fc.property(fc.integer({ min: 3, max: 200 }), (count) => {
        const limit = grubbsLimit(count, 0.05);
        expect(grubbsLimit(count + 1, 0.05)).toBeGreaterThan(limit);
        expect(limit).toBeLessThan((count - 1) / Math.sqrt(count));
      }),
    );
  });
});

describe('the reading that stands furthest off', () => {
  it('of the uranium isotope ratios is the last, beyond the critical value', () => {
    const { place, statistic } = known(grubbsExtreme(URANIUM.readings));
    expect(URANIUM.readings[place]).toBe(URANIUM.outlier);
    expect(cut(statistic, 4)).toBe(URANIUM.statistic);
    const limit = grubbsLimit(URANIUM.readings.length, 0.05, 'one');
    expect(limit.toFixed(3)).toBe(URANIUM.limit);
    expect(statistic).toBeGreaterThan(limit);
  });

  it("of Rosner's readings, one after the other, and how many of them are too far off", () => {
    let left: readonly number[] = ROSNER.readings;
    let beyond = 0;
    ROSNER.statistics.forEach((printed, step) => {
      const { place, statistic } = known(grubbsExtreme(left));
      const limit = grubbsLimit(left.length, 0.05);
      // Digits cut off; the last one of some, as remembered, is off by one more.
      expectClose(statistic, Number(printed), { absolute: 1.1e-3 });
      expectClose(limit, Number(ROSNER.limits[step]), { absolute: 1.1e-3 });
      if (statistic > limit) beyond = step + 1;
      left = left.filter((_, other) => other !== place);
    });
    expect(beyond).toBe(ROSNER.outliers);
  });

  it('does not change its statistic with unit, sign or origin', () => {
    const readings = fc.array(fc.integer({ min: -500, max: 500 }), { minLength: 3, maxLength: 12 });
    fc.assert(
      fc.property(readings, (values) => {
        const here = grubbsExtreme(values);
        const there = grubbsExtreme(values.map((value) => 1e4 - 0.0254 * value));
        if (here === undefined) return;
        expectClose(there?.statistic, here.statistic, { relative: 1e-8 });
      }),
    );
  });

  it('is none among two, or among readings all alike', () => {
    expect(grubbsExtreme([1, 100])).toBeUndefined();
    expect(grubbsExtreme([0.1, 0.1, 0.1, 0.1])).toBeUndefined();
  });
});

describe('what makes no sense is refused', () => {
  it.each([2, 0, 3.5, Number.NaN])('%d readings', (count) => {
    expect(() => grubbsLimit(count, 0.05)).toThrow(RangeError);
  });

  it.each([0, 1, Number.NaN])('a significance of %d', (significance) => {
    expect(() => grubbsLimit(5, significance)).toThrow(RangeError);
  });

  it('a reading that is not finite', () => {
    expect(() => grubbsExtreme([1, 2, Number.NaN])).toThrow(RangeError);
  });
});
