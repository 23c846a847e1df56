import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  chiSquareAbove,
  chiSquareBelow,
  chiSquareQuantile,
} from '../../../src/core/statistics/chi-square';
import { normalBelow } from '../../../src/core/statistics/normal';
import { expectClose } from '../support/close';
import { CHI_SQUARE_TABLE } from './reference/chi-square';
import { CHI_SQUARE_PARTS, CHI_SQUARE_QUANTILES } from './reference/high-precision';

const degrees = fc.oneof(
  fc.integer({ min: 1, max: 40 }),
  fc.double({ min: 1, max: 1e4, noNaN: true }),
);
/** A chi-square as a share of its degrees of freedom. */
const share = fc.double({ min: 1e-3, max: 5, noNaN: true });

describe('printed tables of chi-square', () => {
  it.each(CHI_SQUARE_TABLE)('with $degrees degrees of freedom', (row) => {
    const found = row.above.map((above) => chiSquareQuantile(1 - above, row.degrees));
    expect(found.map((value) => value.toFixed(row.decimals))).toEqual(row.printed);
  });
});

describe('the parts of the distribution below and above', () => {
  it('with 1, 2 and 4 degrees of freedom have closed forms', () => {
    // A&S 26.4.4 and 26.4.5, from memory.
    fc.assert(
      fc.property(fc.double({ min: 0, max: 60, noNaN: true }), (value) => {
        const beyond = 2 * normalBelow(-Math.sqrt(value));
        expectClose(chiSquareAbove(value, 1), beyond, { absolute: 1e-15, relative: 1e-12 });
        const rest = Math.exp(-value / 2);
        expectClose(chiSquareAbove(value, 2), rest, { absolute: 1e-15, relative: 1e-13 });
        expectClose(chiSquareAbove(value, 4), rest * (1 + value / 2), {
          absolute: 1e-15,
          relative: 1e-13,
        });
      }),
    );
  });

  it.each(CHI_SQUARE_PARTS)('at %d with %d degrees of freedom', (value, freedom, below, above) => {
    const [smaller, greater] = [chiSquareBelow(value, freedom), chiSquareAbove(value, freedom)];
    expectClose(smaller, below, below < above ? { relative: 1e-12 } : { absolute: 1e-15 });
    expectClose(greater, above, below < above ? { absolute: 1e-15 } : { relative: 1e-12 });
  });

  it('make 1, and lie between 0 and 1', () => {
    fc.assert(
      fc.property(share, degrees, (ratio, freedom) => {
        const below = chiSquareBelow(ratio * freedom, freedom);
        const above = chiSquareAbove(ratio * freedom, freedom);
        expectClose(below + above, 1, { absolute: 2e-16 });
        expect(Math.min(below, above)).toBeGreaterThanOrEqual(0);
      }),
    );
  });

  it('meet without a step where the method changes', () => {
    fc.assert(
      fc.property(degrees, (freedom) => {
        const at = freedom + 2;
        const [before, after] = [at * (1 - 1e-13), at * (1 + 1e-13)];
        expectClose(chiSquareBelow(before, freedom), chiSquareBelow(after, freedom), {
          relative: 3e-11,
        });
      }),
    );
  });

  it('follow the recurrence from one number of degrees to two more', () => {
    // A&S 26.4.8, from memory: Q(x|ν) + (x/2)^(ν/2)·exp(-x/2)/Γ(ν/2 + 1) = Q(x|ν + 2), here for even ν.
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 15 }), share, (half, ratio) => {
        const x = ratio * half;
        let term = Math.exp(-x);
        for (let k = 1; k <= half; k += 1) term *= x / k;
        expectClose(chiSquareAbove(2 * x, 2 * half) + term, chiSquareAbove(2 * x, 2 * half + 2), {
          absolute: 1e-15,
          relative: 1e-12,
        });
      }),
    );
  });

  it('are nothing and all at the ends', () => {
    expect([chiSquareBelow(0, 3), chiSquareAbove(0, 3)]).toEqual([0, 1]);
    const end = Number.POSITIVE_INFINITY;
    expect([chiSquareBelow(end, 3), chiSquareAbove(end, 3)]).toEqual([1, 0]);
  });
});

describe('the chi-square below which a part lies', () => {
  it.each(CHI_SQUARE_QUANTILES)('%d, with %d degrees of freedom, is %d', (part, freedom, value) => {
    expectClose(chiSquareQuantile(part, freedom), value, { relative: 1e-13 });
  });

  it('undoes the parts', () => {
    fc.assert(
      fc.property(share, degrees, (ratio, freedom) => {
        const value = ratio * freedom;
        const below = chiSquareBelow(value, freedom);
        fc.pre(below > 1e-250 && below < 0.999);
        expectClose(chiSquareQuantile(below, freedom), value, { relative: 1e-11 });
      }),
    );
  });

  it('grows with the part', () => {
    const parts = fc.integer({ min: 1, max: 2 ** 30 - 1 }).map((count) => count / 2 ** 30);
    fc.assert(
      fc.property(parts, parts, degrees, (one, other, freedom) => {
        fc.pre(one < other);
        expect(chiSquareQuantile(one, freedom)).toBeLessThan(chiSquareQuantile(other, freedom));
      }),
    );
  });

  it('goes to the degrees of freedom where they are many', () => {
    expectClose(chiSquareQuantile(0.5, 1e6), 1e6 - 2 / 3, { absolute: 1e-6 });
  });
});

describe('what makes no sense is refused', () => {
  it.each([0, 0.99, -1, Number.NaN, Number.POSITIVE_INFINITY])('%d degrees', (freedom) => {
    expect(() => chiSquareBelow(1, freedom)).toThrow(RangeError);
    expect(() => chiSquareAbove(1, freedom)).toThrow(RangeError);
    expect(() => chiSquareQuantile(0.5, freedom)).toThrow(RangeError);
  });

  it.each([-1, Number.NaN])('a chi-square of %d', (value) => {
    expect(() => chiSquareBelow(value, 3)).toThrow(RangeError);
    expect(() => chiSquareAbove(value, 3)).toThrow(RangeError);
  });

  it.each([0, 1, -0.1, Number.NaN])('a part of %d', (part) => {
    expect(() => chiSquareQuantile(part, 3)).toThrow(RangeError);
  });
});
