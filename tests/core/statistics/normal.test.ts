import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { integrate } from '../../../src/core/statistics/integrate';
import {
  normalBelow,
  normalBetween,
  normalDensity,
  normalQuantile,
} from '../../../src/core/statistics/normal';
import { JCGM_106 } from '../reference/conformity';
import { expectClose } from '../support/close';
import { NORMAL_QUANTILES } from './reference/high-precision';

const z = fc.double({ min: -8, max: 8, noNaN: true });

describe('the part of a normal distribution below z', () => {
  it.each([
    // Abramowitz and Stegun, Handbook of Mathematical Functions, table 26.1, P(x) to 15 decimals:
    // from memory, worked again with another library.
    [0, 0.5],
    [0.5, 0.691462461274013],
    [1, 0.841344746068543],
    [1.5, 0.933192798731142],
    [2, 0.977249868051821],
    [2.5, 0.993790334674224],
    [3, 0.99865010196837],
    [4, 0.999968328758167],
  ])('at z = %d', (at, published) => {
    expectClose(normalBelow(at), published, { absolute: 1.5e-15 });
  });

  it.each([
    // The same handbook, table 26.2, -log Q(x) to 5 decimals: from memory, worked again likewise.
    [5, 6.54265],
    [10, 23.11805],
    [20, 88.5601],
  ])('in the far tail, %d away', (at, minusLog) => {
    expectClose(-Math.log10(normalBelow(-at)), minusLog, { absolute: 6e-6 });
  });

  it('and the part above make 1', () => {
    fc.assert(
      fc.property(z, (at) => {
        expectClose(normalBelow(at) + normalBelow(-at), 1, { absolute: 2e-16 });
      }),
    );
  });

  it('is what lies under the density, on both sides of where the method changes', () => {
    fc.assert(
      fc.property(z, fc.double({ min: 0, max: 2, noNaN: true }), (from, width) => {
        const area = integrate(normalDensity, from, from + width, 1e-13);
        expectClose(normalBelow(from + width) - normalBelow(from), area, { absolute: 1e-12 });
      }),
    );
  });
});

describe('the part between two limits', () => {
  it('is the difference of what lies below them, scaled and moved', () => {
    expectClose(normalBetween(3, 7, 5, 2), 2 * normalBelow(1) - 1);
    expectClose(normalBetween(-1e9, 7, 5, 2), normalBelow(1));
  });

  it('keeps its digits far out on either side', () => {
    const above = normalBelow(-9) - normalBelow(-10);
    expectClose(normalBetween(9, 10, 0, 1), above, { relative: 1e-15 });
    expectClose(normalBetween(-10, -9, 0, 1), above, { relative: 1e-15 });
  });

  it('is all or nothing where there is no spread, the limits belonging to it', () => {
    expect(normalBetween(3, 7, 5, 0)).toBe(1);
    expect(normalBetween(3, 7, 3, 0)).toBe(1);
    expect(normalBetween(3, 7, 7, 0)).toBe(1);
    expect(normalBetween(3, 7, 7.001, 0)).toBe(0);
  });

  it('is nothing where the limits have crossed', () => {
    expect(normalBetween(7, 3, 5, 2)).toBe(0);
  });
});

describe('the z below which a part lies', () => {
  it.each(JCGM_106.table1)('is that of JCGM 106, Table 1, for %d: %s', (part, z) => {
    // From memory, see there.
    expect(normalQuantile(part).toFixed(2)).toBe(z);
  });

  it('gives the guard of the speed limit in JCGM 106, 8.3.3', () => {
    // From memory, worked again: with a relative standard uncertainty of 2 %, the speed that is
    // above 100 km/h with a probability of 99.9 %, rounded up.
    const threshold = 100 / (1 - 0.02 * normalQuantile(0.999));
    expect(threshold.toFixed(2)).toBe('106.59');
    expect(Math.ceil(threshold)).toBe(107);
  });

  it.each([
    // Wichura, Algorithm AS 241, Applied Statistics 37 (1988): the values given there to check a
    // program with, from memory, to 15 digits.
    [0.25, -0.674489750196082],
    [0.001, -3.09023230616781],
    [1e-20, -9.26234008979841],
  ])('of %d as published', (part, z) => {
    expectClose(normalQuantile(part), z, { relative: 2e-15 });
  });

  it.each(NORMAL_QUANTILES)('of %d, to rounding', (part, z) => {
    expectClose(normalQuantile(part), z, { relative: 5e-15 });
  });

  it('undoes the part below, keeping to what a double can tell of it', () => {
    fc.assert(
      fc.property(fc.double({ min: -37, max: 5, noNaN: true }), (at) => {
        const lost = at > 0 ? 2e-16 / normalDensity(at) : 0;
        expectClose(normalQuantile(normalBelow(at)), at, {
          absolute: 1e-15 + lost,
          relative: 1e-13,
        });
      }),
    );
  });

  it('is undone by the part below', () => {
    fc.assert(
      fc.property(fc.double({ min: 1e-300, max: 0.5, noNaN: true }), (part) => {
        expectClose(normalBelow(normalQuantile(part)), part, { relative: 1e-11 });
      }),
    );
  });

  it('of a part and of the rest are opposite, and grow with the part', () => {
    expect(Math.abs(normalQuantile(0.5))).toBeLessThan(1e-16);
    const parts = fc.integer({ min: 1, max: 2 ** 30 - 1 }).map((count) => count / 2 ** 30);
    fc.assert(
      fc.property(parts, parts, (one, other) => {
        expectClose(normalQuantile(1 - one), -normalQuantile(one), { absolute: 1e-16 });
        if (one < other) expect(normalQuantile(one)).toBeLessThan(normalQuantile(other));
      }),
    );
  });

  it('is a number down to the least part there is', () => {
    expectClose(normalQuantile(Number.MIN_VALUE), -38.45, { absolute: 0.05 });
    expectClose(normalQuantile(1 - Number.EPSILON / 2), 8.2, { absolute: 0.1 });
  });

  it.each([0, 1, -0.1, 1.1, Number.NaN])('is refused for a part of %d', (part) => {
    expect(() => normalQuantile(part)).toThrow(RangeError);
  });
});
