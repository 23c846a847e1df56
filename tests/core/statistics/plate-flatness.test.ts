import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  diagonalOf,
  FEDERAL_PLATE_GRADES,
  federalFlatness,
  ISO_PLATE_GRADES,
  isoFlatness,
  localFlatness,
} from '../../../src/core/statistics/plate-flatness';
import { expectClose } from '../support/close';
import { FEDERAL_TABLE, ISO_TABLE } from './reference/plates';

const INCH = 25.4;
const size = fc.double({ min: 50, max: 4000, noNaN: true });

describe('flatness by ISO 8512-2', () => {
  it.each(ISO_TABLE)('of %d mm × %d mm, all four grades', (length, width, table) => {
    const found = ISO_PLATE_GRADES.map((grade) => {
      const step = grade === 0 ? 0.5 : 1;
      return Math.round(isoFlatness(length, width, grade) / step) * step;
    });
    expect(found).toEqual(table);
  });

  it('of all 12 sizes', () => {
    expect(ISO_TABLE).toHaveLength(12);
  });

  it('goes up in steps of 100 mm of the diagonal, a whole step belonging below', () => {
    expectClose(isoFlatness(300, 400, 0), 0.003 * 500 + 2.5);
    expectClose(isoFlatness(300.001, 400, 0), 0.003 * 600 + 2.5);
    // 28 × 0.1 is a little more than 2.8 in a double, and the diagonal may be likewise.
    expectClose(isoFlatness(60 * 1.1 * 10, 80 * 1.1 * 10, 1), 0.006 * 1100 + 5);
  });

  it('grows with the plate and doubles from grade to grade', () => {
    fc.assert(
      fc.property(size, size, (length, width) => {
        const grades = ISO_PLATE_GRADES.map((grade) => isoFlatness(length, width, grade));
        for (const [place, flatness] of grades.entries()) {
          if (place > 0) expectClose(flatness, 2 * grades[place - 1]!);
        }
        expect(isoFlatness(length + 100, width, 0)).toBeGreaterThanOrEqual(grades[0]!);
        expect(isoFlatness(width, length, 0)).toBe(grades[0]);
      }),
    );
  });
});

describe('flatness by GGG-P-463c', () => {
  it.each(FEDERAL_TABLE)('of %d in × %d in, grade AA', (length, width, table) => {
    const flatness = federalFlatness(length * INCH, width * INCH, 'AA') / 0.0254;
    const step = flatness < 100 ? 25 : 50;
    expect(Math.round(flatness / step) * step).toBe(table);
  });

  it('of grades A and B is twice and four times that of AA', () => {
    fc.assert(
      fc.property(size, size, fc.constantFrom('inch', 'metric'), (length, width, formula) => {
        const [best, ...others] = FEDERAL_PLATE_GRADES.map((grade) =>
          federalFlatness(length, width, grade, formula),
        );
        expectClose(others[0], 2 * best!);
        expectClose(others[1], 4 * best!);
      }),
    );
  });

  it('is nearly the same by the metric formula', () => {
    // Worked in the set of reference values: D = 1000 mm is 2.6 µm, or 2.5908 µm by the inches.
    expectClose(federalFlatness(600, 800, 'AA', 'metric'), 2.6);
    expectClose(federalFlatness(600, 800, 'AA', 'inch'), 2.5908, { absolute: 5e-5 });
    fc.assert(
      fc.property(size, size, (length, width) => {
        const metric = federalFlatness(length, width, 'A', 'metric');
        expectClose(metric, federalFlatness(length, width, 'A'), { relative: 0.016 });
      }),
    );
  });
});

describe('what of it acts under a block', () => {
  const plate = { overall: 6, diagonal: 1200 };
  /** Height and slope of a plate in one bow, mm from its middle. */
  const height = (x: number) => 4 * plate.overall * (x / plate.diagonal) ** 2;
  const slope = (x: number) => (8 * plate.overall * x) / plate.diagonal ** 2;

  it('is in proportion to the length, and no more than the whole', () => {
    expectClose(localFlatness(6, 1200, 100), 0.5);
    expect(localFlatness(6, 1200, 5000)).toBe(6);
  });

  it('covers the tilt between block and comparator on a plate in one bow', () => {
    const place = fc.double({ min: -400, max: 400, noNaN: true });
    const apart = fc.double({ min: -plate.diagonal / 8, max: plate.diagonal / 8, noNaN: true });
    const length = fc.double({ min: 10, max: 150, noNaN: true });
    fc.assert(
      fc.property(place, apart, length, (at, off, long) => {
        expectClose(height(plate.diagonal / 2) - height(0), plate.overall);
        const rise = height(at + long / 2) - height(at - long / 2);
        const tilt = Math.abs(rise - slope(at + off) * long);
        const covered = localFlatness(plate.overall, plate.diagonal, long);
        expect(tilt).toBeLessThanOrEqual(covered * (1 + 1e-9));
      }),
    );
  });

  it('on an ordinary plate is what the default kit allows', () => {
    // 100 mm on a plate of 630 mm × 400 mm, grade A: near ± 0.5 µm.
    const overall = federalFlatness(630, 400, 'A');
    expectClose(localFlatness(overall, diagonalOf(630, 400), 100), 0.5, { absolute: 0.05 });
  });
});

describe('what makes no sense is refused', () => {
  it.each([0, -100, Number.NaN, Number.POSITIVE_INFINITY])('a length of %d', (bad) => {
    expect(() => isoFlatness(bad, 400, 0)).toThrow(RangeError);
    expect(() => isoFlatness(400, bad, 0)).toThrow(RangeError);
    expect(() => federalFlatness(bad, 400, 'A')).toThrow(RangeError);
    expect(() => diagonalOf(400, bad)).toThrow(RangeError);
    expect(() => localFlatness(5, bad, 100)).toThrow(RangeError);
    expect(() => localFlatness(5, 100, bad)).toThrow(RangeError);
  });

  it.each([-1, Number.NaN, Number.POSITIVE_INFINITY])('a flatness of %d', (bad) => {
    expect(() => localFlatness(bad, 1000, 100)).toThrow(RangeError);
  });

  it('a grade that is none', () => {
    expect(() => isoFlatness(400, 400, 4 as 3)).toThrow(RangeError);
    expect(() => federalFlatness(400, 400, 'toString' as 'A')).toThrow(RangeError);
  });
});
