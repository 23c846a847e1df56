import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { integrate } from '../../../src/core/statistics/integrate';
import { normalBelow, normalDensity } from '../../../src/core/statistics/normal';
import {
  studentBelow,
  studentDensity,
  studentQuantile,
  studentWithin,
} from '../../../src/core/statistics/student';
import { expectClose } from '../support/close';
import { STUDENT_QUANTILES, STUDENT_TAILS } from './reference/high-precision';
import { MISPRINT, T_FACTORS } from './reference/t-factors';

/** 1, 2 and 3 standard deviations of the normal distribution, where 68.27, 95.45 and 99.73 % stand. */
const sigmas = (count: number) => 1 - 2 * normalBelow(-count);
const COLUMNS = [sigmas(1), 0.9, 0.95, sigmas(2), 0.99, sigmas(3)];

const degrees = fc.oneof(
  fc.integer({ min: 1, max: 40 }),
  fc.double({ min: 1, max: 1e6, noNaN: true }),
  fc.constant(Number.POSITIVE_INFINITY),
);
const t = fc.double({ min: -30, max: 30, noNaN: true });

describe('the t factors of GUM Table G.2', () => {
  const entries = T_FACTORS.flatMap(([freedom, ...row]) =>
    row.map((printed, column) => ({ freedom, column, printed })),
  );

  it('are there, all 28 rows of 6', () => {
    expect(entries).toHaveLength(168);
  });

  it('come out as printed, but for one', () => {
    const wrong = entries.filter(({ freedom, column, printed }) => {
      const decimals = printed.split('.')[1]!.length;
      return studentWithin(COLUMNS[column]!, freedom).toFixed(decimals) !== printed;
    });
    expect(wrong).toEqual([
      { freedom: MISPRINT.degrees, column: MISPRINT.column, printed: MISPRINT.printed },
    ]);
    expectClose(studentWithin(0.9, MISPRINT.degrees), MISPRINT.exact, { absolute: 5e-7 });
  });
});

describe("the part of Student's distribution below t", () => {
  it('with 1, 2 and 4 degrees of freedom has a closed form', () => {
    // A&S 26.7.3 and 26.7.4, from memory.
    fc.assert(
      fc.property(t, (at) => {
        expectClose(studentBelow(at, 1), 0.5 + Math.atan(at) / Math.PI, { absolute: 1e-15 });
        const two = at / Math.sqrt(2 + at * at);
        expectClose(studentBelow(at, 2), 0.5 + two / 2, { absolute: 1e-15 });
        const four = at / Math.sqrt(4 + at * at);
        const cosine = 4 / (4 + at * at);
        expectClose(studentBelow(at, 4), 0.5 + (four * (1 + cosine / 2)) / 2, { absolute: 1e-15 });
      }),
    );
  });

  it.each(STUDENT_TAILS)('beyond %d with %d degrees of freedom is %d', (at, freedom, tail) => {
    expectClose(studentBelow(-at, freedom), tail, { relative: 1e-13 });
    expectClose(studentBelow(at, freedom), 1 - tail, { absolute: 1e-15 });
  });

  it('and the part above make 1', () => {
    fc.assert(
      fc.property(t, degrees, (at, freedom) => {
        expectClose(studentBelow(at, freedom) + studentBelow(-at, freedom), 1, {
          absolute: 3e-16,
        });
      }),
    );
  });

  it('is what lies under the density, on all sides of where the methods change', () => {
    const some = fc.oneof(fc.constantFrom(1, 2.5, 7, 999.9, 1000), degrees);
    const width = fc.double({ min: 0, max: 3, noNaN: true });
    fc.assert(
      fc.property(
        fc.double({ min: -5, max: 3, noNaN: true }),
        width,
        some,
        (from, wide, freedom) => {
          const area = integrate((at) => studentDensity(at, freedom), from, from + wide, 1e-13);
          expectClose(studentBelow(from + wide, freedom) - studentBelow(from, freedom), area, {
            absolute: 1e-12,
          });
        },
      ),
    );
  });

  it('is that of the normal distribution without end of the degrees, and goes to it', () => {
    fc.assert(
      fc.property(t, (at) => {
        const normal = normalBelow(at);
        expect(studentBelow(at, Number.POSITIVE_INFINITY)).toBe(normal);
        expectClose(studentBelow(at, 1e15), normal, { absolute: 1e-15 });
        expect(studentDensity(at, Number.POSITIVE_INFINITY)).toBe(normalDensity(at));
      }),
    );
  });

  it('below 0 falls as the degrees of freedom rise', () => {
    const below = fc.double({ min: -20, max: -0.01, noNaN: true });
    fc.assert(
      fc.property(below, fc.double({ min: 1, max: 900, noNaN: true }), (at, freedom) => {
        expect(studentBelow(at, freedom * 1.1)).toBeLessThan(studentBelow(at, freedom));
      }),
    );
  });

  it('is all or nothing at the ends, and small numbers far out', () => {
    expect(studentBelow(Number.POSITIVE_INFINITY, 3)).toBe(1);
    expect(studentBelow(Number.NEGATIVE_INFINITY, 3)).toBe(0);
    expect(studentBelow(Number.NEGATIVE_INFINITY, 1e4)).toBe(0);
    expectClose(studentBelow(-1e200, 1), 1e-200 / Math.PI, { relative: 1e-12 });
  });
});

describe('the t below which a part lies', () => {
  it.each(STUDENT_QUANTILES)(
    '%d from above, with %d degrees of freedom, is %d',
    (part, freedom, at) => {
      expectClose(studentQuantile(part, freedom), -at, { relative: 2e-13 });
    },
  );

  it('undoes the part below', () => {
    const below = fc.double({ min: -200, max: -1e-3, noNaN: true });
    fc.assert(
      fc.property(below, degrees, (at, freedom) => {
        const part = studentBelow(at, freedom);
        fc.pre(part > 1e-290);
        // Near 0 the part is near ½, and a double tells it only to 1e-16.
        expectClose(studentQuantile(part, freedom), at, { absolute: 1e-15, relative: 1e-10 });
      }),
    );
  });

  it('grows with the part, and is opposite for the rest', () => {
    const parts = fc.integer({ min: 1, max: 2 ** 30 - 1 }).map((count) => count / 2 ** 30);
    fc.assert(
      fc.property(parts, parts, degrees, (one, other, freedom) => {
        const at = studentQuantile(one, freedom);
        expectClose(studentQuantile(1 - one, freedom), -at, { relative: 1e-15 });
        if (one < other) expect(at).toBeLessThan(studentQuantile(other, freedom));
      }),
    );
  });

  it('is 0 in the middle, and found as near to it as a double can be', () => {
    expect(studentQuantile(0.5, 5)).toBe(0);
    const near = 0.5 - Number.EPSILON / 4;
    for (const freedom of [1, 5, 2000]) {
      const at = studentQuantile(near, freedom);
      expect(at).toBeLessThan(0);
      expect(at).toBeGreaterThan(-1e-15);
    }
  });
});

describe('what makes no sense is refused', () => {
  it.each([0, 0.99, -1, Number.NaN])('%d degrees of freedom', (freedom) => {
    expect(() => studentBelow(1, freedom)).toThrow(RangeError);
    expect(() => studentDensity(1, freedom)).toThrow(RangeError);
    expect(() => studentQuantile(0.3, freedom)).toThrow(RangeError);
    expect(() => studentWithin(0.3, freedom)).toThrow(RangeError);
  });

  it.each([0, 1, -0.1, 1.1, Number.NaN])('a part of %d', (part) => {
    expect(() => studentQuantile(part, 3)).toThrow(RangeError);
    expect(() => studentWithin(part, 3)).toThrow(RangeError);
  });

  it('a t that is not a number', () => {
    expect(() => studentBelow(Number.NaN, 3)).toThrow(RangeError);
  });
});
