import { describe, expect, it } from 'vitest';
import { formRead } from '../../../src/core/inspection/form-read';
import { indicatorDoubt, micrometerDoubt } from '../../../src/core/readings/doubts';
import { combined } from '../../../src/core/readings/equation';
import { DEFAULT_KIT, type Kit } from '../../../src/core/readings/kit';
import type { Reading } from '../../../src/core/readings/reading';
import { randomFrom as coreRandom } from '../../../src/core/statistics/random';
import { widthDraws } from '../../../src/core/verdict/width-draws';
import { type FormPoint, formPointsOf } from '../../../src/core/zones/zone-with-form';
import { expectClose } from '../support/close';
import { manyRandoms } from '../support/random';
import { micrometer, traverse } from '../support/readings';
import { again } from '../support/repeated-inspection';
import { BLOCK } from '../support/worked-block';

const SQUARE = { face: 'right', datum: 'bottom' } as const;
const PARALLEL = { face: 'right', datum: 'left' } as const;

/** Instruments so good that what they leave is all form. */
const SHARP: Kit = {
  ...DEFAULT_KIT,
  ...{ indicatorResolution: 1e-9, indicatorError: 0 },
  ...{ micrometerResolution: 1e-9, micrometerError: 0 },
};
const SIGMA = combined(indicatorDoubt(DEFAULT_KIT));

/** A traverse of one seating: its own zero and rise, and what it shows of the form. */
function seated(index: number, zero: number, rise: number, shown: readonly number[]) {
  const values = shown.map((one, place) => [10 + 35 * place, zero + rise * place + one]);
  return traverse('right', Object.fromEntries(values)).map((one) => ({
    ...again(one, index),
    placing: `seating ${index}`,
  }));
}

const residuals = (points: readonly FormPoint[]) => points.map(({ residual }) => residual);

describe('form that was read once', () => {
  it('is what the zone has of it', () => {
    const readings = [...seated(0, 5, 7, [0, 3, 0]), ...traverse('right', { 20: 0, 50: 4, 70: 2 })];
    expect(formRead(SQUARE, readings, BLOCK, DEFAULT_KIT)).toEqual(
      formPointsOf(SQUARE, readings, BLOCK, DEFAULT_KIT),
    );
  });

  it('up other heights, or over another face, is not averaged with it', () => {
    const other = traverse('right', { 10: 0, 44: 3, 80: 0 });
    const left = traverse('left', { 10: 0, 45: 9, 80: 0 });
    const readings = [...seated(0, 0, 0, [0, 3, 0]), ...other, ...left];
    const points = formRead(SQUARE, readings, BLOCK, SHARP);
    expect(points).toHaveLength(6);
    expect(new Set(points.map(({ group }) => group)).size).toBe(2);
  });
});

describe('form that was read again after seating', () => {
  it('is the mean at each place, whatever the zero and the rise of each seating', () => {
    // 3 and 6 over the chord: 4.5, of which the line takes a third.
    const readings = [...seated(0, 5, 7, [0, 3, 0]), ...seated(1, -20, 1, [0, 6, 0])];
    const points = formRead(SQUARE, readings, BLOCK, SHARP);
    expect(points).toHaveLength(3);
    [-1.5, 3, -1.5].forEach((expected, index) => {
      expectClose(residuals(points)[index], expected, { absolute: 1e-9 });
    });
  });

  it('is doubted as a mean: σ/√n, where it is nearly all form', () => {
    for (const times of [1, 2, 4, 9]) {
      const readings = Array.from({ length: times }, (_, index) =>
        seated(index, index, -index, [0, 300, 0]),
      ).flat();
      for (const { standard } of formRead(SQUARE, readings, BLOCK, DEFAULT_KIT)) {
        expectClose(standard, SIGMA / Math.sqrt(times), { relative: 1e-5 });
      }
    }
  });

  it('is doubted as its place that was read least often', () => {
    const places = [-40, 0, 40].flatMap((z) => [-15, 15].map((y) => ({ y, z })));
    const once = places.map((place) => micrometer('right', place, place.z === 0 ? 300 : 0));
    const twice = once.map((one) => again(one, 1));
    const own = combined(micrometerDoubt(DEFAULT_KIT));
    const doubt = (readings: readonly Reading[]) =>
      formRead(PARALLEL, readings, BLOCK, DEFAULT_KIT)[0]!.standard;
    expectClose(doubt([...once, ...twice]), own / Math.SQRT2, { relative: 1e-5 });
    expectClose(doubt([...once, ...twice.slice(1)]), own, { relative: 1e-5 });
  });

  it('does not widen the zone of a straight side with every seating', () => {
    const mean = (times: number) => {
      const means = manyRandoms(40, 12).map((random) => {
        const readings = Array.from({ length: times }, (_, index) =>
          seated(
            index,
            0,
            0,
            [0, 0, 0].map(() => SIGMA * random.normal()),
          ),
        ).flat();
        const points = formRead(SQUARE, readings, BLOCK, DEFAULT_KIT);
        const parts = [{ value: 0, standard: 0 }];
        const known = { parts, covariance: 0, degreesOfFreedom: Number.POSITIVE_INFINITY };
        const widths = new Float64Array(500);
        widthDraws(known, points, coreRandom(1))(widths);
        return widths.reduce((sum, width) => sum + width, 0) / widths.length;
      });
      return means.reduce((sum, one) => sum + one, 0) / means.length;
    };
    const [once, four, sixteen] = [1, 4, 16].map(mean);
    expect(four!).toBeLessThan(once!);
    expect(sixteen!).toBeLessThan(four!);
  });
});
