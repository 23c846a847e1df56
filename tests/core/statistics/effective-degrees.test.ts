import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  combineDoubt,
  coverageFactor,
  degreesOfJudgement,
} from '../../../src/core/statistics/effective-degrees';
import { normalQuantile } from '../../../src/core/statistics/normal';
import { studentWithin } from '../../../src/core/statistics/student';
import { expectClose } from '../support/close';
import { END_GAUGE } from './reference/end-gauge';

const component = fc.record({
  standard: fc.integer({ min: 0, max: 1000 }).map((tenths) => tenths / 10),
  degreesOfFreedom: fc.oneof(
    fc.integer({ min: 1, max: 100 }),
    fc.constant(Number.POSITIVE_INFINITY),
  ),
});
const components = fc.array(component, { minLength: 1, maxLength: 8 });

describe('the end gauge of GUM H.1', () => {
  const { comparison } = END_GAUGE;

  it('the comparison, from its three parts', () => {
    const { standard, degreesOfFreedom } = combineDoubt(comparison.components);
    expect(standard.toFixed(1)).toBe(comparison.standard);
    // The example works with 9.7, already rounded.
    const rounded = (9.7 / standard) ** 4 * degreesOfFreedom;
    expect(rounded.toFixed(1)).toBe(comparison.degrees);
  });

  it('the whole budget, with its effective degrees of freedom and t factor', () => {
    const { standard, degreesOfFreedom } = combineDoubt(END_GAUGE.components);
    expect(standard.toFixed(0)).toBe(END_GAUGE.combined);
    expect(Math.floor(degreesOfFreedom)).toBe(END_GAUGE.degrees);
    const k = coverageFactor(0.99, degreesOfFreedom);
    expect(k.toFixed(2)).toBe(END_GAUGE.t99);
    // 32 nm and 2.92 as printed; what they are rounded from gives 92.5.
    const expanded = Number(END_GAUGE.combined) * Number(k.toFixed(2));
    expect(expanded.toFixed(0)).toBe(END_GAUGE.expanded);
  });

  it('cuts the degrees of freedom, and does not round them', () => {
    const { degreesOfFreedom } = combineDoubt(END_GAUGE.components);
    // Worked again in the set of reference values.
    expectClose(degreesOfFreedom, 16.76455398, { absolute: 5e-9 });
    expect(coverageFactor(0.99, degreesOfFreedom)).toBe(studentWithin(0.99, 16));
  });
});

describe('effective degrees of freedom', () => {
  it('lie between the least of the components and all of them together', () => {
    fc.assert(
      fc.property(components, (all) => {
        fc.pre(all.some(({ standard }) => standard > 0));
        const counting = all.filter(({ standard }) => standard > 0);
        const { degreesOfFreedom } = combineDoubt(all);
        const each = counting.map((one) => one.degreesOfFreedom);
        expect(degreesOfFreedom).toBeGreaterThanOrEqual(Math.min(...each) * (1 - 1e-12));
        const total = each.reduce((sum, one) => sum + one, 0);
        expect(degreesOfFreedom).toBeLessThanOrEqual(total * (1 + 1e-12));
      }),
    );
  });

  it('do not depend on the unit nor on the order', () => {
    fc.assert(
      fc.property(components, (all) => {
        const here = combineDoubt(all);
        const there = combineDoubt(
          all.toReversed().map((one) => ({ ...one, standard: one.standard * 2.54e-5 })),
        );
        expectClose(there.standard, here.standard * 2.54e-5, { relative: 1e-14 });
        if (here.degreesOfFreedom === Number.POSITIVE_INFINITY) {
          expect(there.degreesOfFreedom).toBe(Number.POSITIVE_INFINITY);
        } else {
          expectClose(there.degreesOfFreedom, here.degreesOfFreedom, { relative: 1e-13 });
        }
      }),
    );
  });

  it('of equal components add up', () => {
    const one = { standard: 0.3, degreesOfFreedom: 4 };
    const four = combineDoubt([one, one, one, one]);
    expectClose(four.standard, 0.6);
    expectClose(four.degreesOfFreedom, 16);
    // Whatever rounding has left of 16, it is taken for 16.
    expect(coverageFactor(0.95, four.degreesOfFreedom)).toBe(studentWithin(0.95, 16));
    expect(coverageFactor(0.95, 16 - 1e-12)).toBe(studentWithin(0.95, 16));
    expect(coverageFactor(0.95, 15.999)).toBe(studentWithin(0.95, 15));
  });

  it('of one component are its own, and of none, or none that counts, have no end', () => {
    expect(combineDoubt([{ standard: 3, degreesOfFreedom: 7 }])).toEqual({
      standard: 3,
      degreesOfFreedom: 7,
    });
    const certain = { standard: 0, degreesOfFreedom: Number.POSITIVE_INFINITY };
    expect(combineDoubt([])).toEqual(certain);
    expect(combineDoubt([{ standard: 0, degreesOfFreedom: 2 }])).toEqual(certain);
    expect(combineDoubt([{ ...certain, standard: 2 }])).toEqual({ ...certain, standard: 2 });
  });
});

describe('the coverage factor', () => {
  it('without end of the degrees of freedom is that of the normal distribution', () => {
    const k = coverageFactor(0.95, Number.POSITIVE_INFINITY);
    expectClose(k, normalQuantile(0.975), { relative: 1e-14 });
  });

  it('falls as the degrees of freedom rise', () => {
    fc.assert(
      fc.property(fc.double({ min: 1, max: 200, noNaN: true }), (degrees) => {
        expect(coverageFactor(0.95, degrees + 1)).toBeLessThan(coverageFactor(0.95, degrees));
      }),
    );
  });
});

describe('degrees of freedom of a judgement', () => {
  it.each([
    // GUM G.4.2 (25 % is 8) and H.1.6 (50 % is 2, 10 % is 50): from memory.
    [0.25, 8],
    [0.5, 2],
    [0.1, 50],
  ])('that may be off by %d are %d', (share, degrees) => {
    expectClose(degreesOfJudgement(share), degrees);
  });

  it('have no end where it is certain, and are at least 1', () => {
    expect(degreesOfJudgement(0)).toBe(Number.POSITIVE_INFINITY);
    expect(degreesOfJudgement(3)).toBe(1);
  });
});

describe('what makes no sense is refused', () => {
  it.each([-1, Number.NaN, Number.POSITIVE_INFINITY])(
    'a standard uncertainty of %d',
    (standard) => {
      expect(() => combineDoubt([{ standard, degreesOfFreedom: 3 }])).toThrow(RangeError);
    },
  );

  it.each([0, 0.5, -2, Number.NaN])('%d degrees of freedom', (degreesOfFreedom) => {
    expect(() => combineDoubt([{ standard: 1, degreesOfFreedom }])).toThrow(RangeError);
    expect(() => coverageFactor(0.95, degreesOfFreedom)).toThrow(RangeError);
  });

  it.each([0, 1, Number.NaN])('a probability of %d', (part) => {
    expect(() => coverageFactor(part, 5)).toThrow(RangeError);
  });

  it.each([-0.1, Number.NaN])('a share of %d', (share) => {
    expect(() => degreesOfJudgement(share)).toThrow(RangeError);
  });
});
