import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  chartOfUsual,
  individualsChart,
  outOfLimits,
} from '../../../src/core/statistics/control-chart';
import { expectClose } from '../support/close';
import { known } from '../support/known';
import { INDIVIDUALS } from './reference/individuals';

const readings = fc.array(
  fc.integer({ min: -500, max: 500 }).map((tenths) => tenths / 10),
  { minLength: 2, maxLength: 30 },
);

describe('the individuals chart of the NIST/SEMATECH e-Handbook, 6.3.2.2', () => {
  const chart = known(individualsChart(INDIVIDUALS.readings));

  it('has the published centre, mean moving range and limits', () => {
    expect(chart.centre.toFixed(2)).toBe(INDIVIDUALS.centre);
    expect(chart.meanMovingRange.toFixed(4)).toBe(INDIVIDUALS.meanMovingRange);
    expect(chart.upper.toFixed(4)).toBe(INDIVIDUALS.upper);
    expect(chart.lower.toFixed(4)).toBe(INDIVIDUALS.lower);
  });

  it('finds nothing out of limits, and a reading that is', () => {
    expect(outOfLimits(INDIVIDUALS.readings, chart)).toEqual([]);
    expect(outOfLimits([50, 55.81, 50, 45.81], chart)).toEqual([1, 3]);
  });
});

describe('an individuals chart', () => {
  it('moves and grows with the readings', () => {
    fc.assert(
      fc.property(readings, (values) => {
        const here = known(individualsChart(values));
        const there = known(individualsChart(values.map((value) => 100 - 2.54 * value)));
        expectClose(there.centre, 100 - 2.54 * here.centre, { absolute: 1e-9 });
        expectClose(there.upper, 100 - 2.54 * here.lower, { absolute: 1e-9 });
        expectClose(there.meanMovingRange, 2.54 * here.meanMovingRange, { absolute: 1e-9 });
      }),
    );
  });

  it('is the same backwards', () => {
    fc.assert(
      fc.property(readings, (values) => {
        const [here, there] = [
          known(individualsChart(values)),
          known(individualsChart(values.toReversed())),
        ];
        expectClose(there.upper, here.upper, { absolute: 1e-10 });
        expectClose(there.lower, here.lower, { absolute: 1e-10 });
      }),
    );
  });

  it('of readings all alike has no width, and none of them is outside', () => {
    const chart = known(individualsChart([0.1, 0.1, 0.1, 0.1]));
    expect([chart.lower, chart.centre, chart.upper]).toEqual([0.1, 0.1, 0.1]);
    expect(outOfLimits([0.1, 0.1, 0.1, 0.1], chart)).toEqual([]);
    expect(outOfLimits([0.1, 0.2], chart)).toEqual([1]);
  });

  it('is not there before the second reading', () => {
    expect(individualsChart([])).toBeUndefined();
    expect(individualsChart([5])).toBeUndefined();
  });

  it.each([Number.NaN, Number.POSITIVE_INFINITY])('is refused with a reading of %d', (bad) => {
    expect(() => individualsChart([1, bad, 2])).toThrow(RangeError);
  });
});

it('readings outside the limits are left out of the limits once', () => {
  const usual = [3, 3.1, 2.9, 3, 3.1, 2.9, 3, 3.1, 2.9, 3, 3.1];
  expect(outOfLimits([...usual, 9], known(individualsChart([...usual, 9])))).toEqual([11]);
  expect(chartOfUsual([...usual, 9])).toEqual(individualsChart(usual));
  expect(chartOfUsual(INDIVIDUALS.readings)).toEqual(individualsChart(INDIVIDUALS.readings));
  expect(chartOfUsual([5])).toBeUndefined();
});
