import { describe, expect, it } from 'vitest';
import { individualsChart } from '../../../src/core/statistics/control-chart';
import { runSignals } from '../../../src/core/statistics/run-rules';
import { known } from '../support/known';
import { randomFrom } from '../support/random';
import { INDIVIDUALS } from './reference/individuals';

/** Limits at ±3 round 0: a third of the way is 1. */
const CHART = { centre: 0, upper: 3 };

const found = (readings: readonly number[]) =>
  runSignals(readings, CHART).map(({ rule, places }) => `${rule}: ${places.join(' ')}`);

describe('the rules of the NIST/SEMATECH e-Handbook, 6.3.2', () => {
  it('find nothing in the example of 6.3.2.2', () => {
    const chart = known(individualsChart(INDIVIDUALS.readings));
    expect(runSignals(INDIVIDUALS.readings, chart)).toEqual([]);
  });

  it.each([
    ['one beyond the limits', [0.1, 3.1, 0], ['beyond the limits: 1']],
    ['none on the limit', [0.1, 3, -3, 0], []],
    ['two of three beyond two thirds', [0, 2.1, 0, 2.1, 0], ['two of three: 1 3']],
    ['not two on opposite sides', [0, 2.1, 0, -2.1], []],
    ['four of five beyond one third', [-0.1, 1.1, 1.2, 0, 1.1, 1.2], ['four of five: 1 2 4 5']],
    ['eight below', [0.1, ...new Array(8).fill(-0.5)], ['eight on one side: 1 2 3 4 5 6 7 8']],
    ['not seven below', [0.1, ...new Array(7).fill(-0.5)], []],
    ['six rising', [0.5, -0.9, -0.6, -0.3, 0.3, 0.6, 0.9], ['six in a row: 1 2 3 4 5 6']],
    ['not six with two alike', [-0.9, -0.6, -0.3, -0.3, 0.6, 0.9], []],
  ])('find %s', (_, readings, expected) => {
    expect(found(readings)).toEqual(expected);
  });

  it('give a signal on both sides alike', () => {
    const readings = [0, 2.1, 0, 2.1, 3.2, 1.5, 1.2, 1.3, 0.5];
    expect(found(readings.map((reading) => -reading))).toEqual(found(readings));
  });

  // Champ and Woodall, Technometrics 29 (1987): 91.75 readings from one false alarm of the four zone
  // rules to the next; the e-Handbook gives the same figure. From memory.
  it('give a false alarm once in 91.75 readings, the one for a trend left aside', () => {
    const random = randomFrom(6322);
    const RUNS = 700;
    let total = 0;
    for (let run = 0; run < RUNS; run += 1) {
      let last: number[] = [];
      let isAlarm = false;
      while (!isAlarm) {
        last = [...last, random.normal()].slice(-8);
        total += 1;
        const end = last.length - 1;
        isAlarm = runSignals(last, CHART).some(
          ({ rule, places }) => rule !== 'six in a row' && places.at(-1) === end,
        );
      }
    }
    // The mean of so many runs scatters by 3.5; without any one of the rules it would be 105 or more.
    expect(Math.abs(total / RUNS - 91.75)).toBeLessThan(10);
  });

  it('refuse a reading that is not finite', () => {
    expect(() => runSignals([1, Number.NaN], CHART)).toThrow(RangeError);
  });
});
