import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { normalBetween } from '../../../src/core/statistics/normal';
import { probabilityOfConformity } from '../../../src/core/verdict/probability';
import type { Zone } from '../../../src/core/zones/zone';
import { T_FACTORS } from '../statistics/reference/t-factors';
import { expectClose } from '../support/close';
import { randomFrom } from '../support/random';
import { doubleZone, simpleZone } from '../support/zones';

const value = fc.integer({ min: -80, max: 80 }).map((tenths) => tenths / 10);
const standard = fc.integer({ min: 1, max: 30 }).map((tenths) => tenths / 10);
const correlation = fc.integer({ min: -10, max: 10 }).map((tenths) => tenths / 10);
const tolerance = fc.integer({ min: 1, max: 100 }).map((tenths) => tenths / 10);
const NEAR = { absolute: 1e-9 };

describe('probability that |p| is within the tolerance', () => {
  it('counts what lies beyond either limit', () => {
    expectClose(probabilityOfConformity(simpleZone(0, 5), 5), 0.682689492137086);
    expectClose(probabilityOfConformity(simpleZone(-3, 2), 5), normalBetween(-5, 5, 3, 2));
  });

  it('is certain where there is no doubt', () => {
    expect(probabilityOfConformity(simpleZone(4, 0), 5)).toBe(1);
    expect(probabilityOfConformity(simpleZone(-6, 0), 5)).toBe(0);
  });
});

describe('probability with few degrees of freedom', () => {
  const withDegrees = (zone: Zone, degreesOfFreedom: number) => ({ ...zone, degreesOfFreedom });

  it('is that of Student’s distribution, as tables have it (GUM, Table G.2)', () => {
    for (const [degrees, , , factor95, , factor99] of T_FACTORS) {
      for (const [factor, probability] of [
        [factor95, 0.95],
        [factor99, 0.99],
      ] as const) {
        // The factors are printed to 0.01.
        const t = Number(factor);
        const at = (size: number) =>
          probabilityOfConformity(withDegrees(simpleZone(0, 1), degrees), size);
        expect(at(t - 0.005)).toBeLessThan(probability);
        expect(at(t + 0.005)).toBeGreaterThan(probability);
      }
    }
  });

  it('of two parts with one certain is that of the other in what is left, none where nothing is', () => {
    const student = (value: number, within: number) =>
      probabilityOfConformity(withDegrees(simpleZone(value, 1), 3), within);
    expectClose(
      probabilityOfConformity(withDegrees(doubleZone([2, 1], [0, 1]), 3), 5),
      student(1, 3),
    );
    expect(probabilityOfConformity(withDegrees(doubleZone([6, 1], [0, 1]), 3), 5)).toBe(0);
    expect(probabilityOfConformity(withDegrees(doubleZone([2, 1], [0, 0]), 3), 5)).toBe(1);
  });

  it('asks for a part', () => {
    expect(() => probabilityOfConformity({ ...simpleZone(1, 1), parts: [] }, 5)).toThrow(
      RangeError,
    );
  });
});

describe('probability that |p| + |q| is within the tolerance', () => {
  it('of two parts with the same uncertainty is that of p + q times that of p - q', () => {
    // |p| + |q| ≤ T is |p + q| ≤ T and |p - q| ≤ T; the two are uncorrelated, with the variances
    // 2s²(1 + ρ) and 2s²(1 - ρ). With ρ = ±1 one of them has no spread at all.
    fc.assert(
      fc.property(value, value, standard, correlation, tolerance, (p, q, s, rho, within) => {
        const zone = doubleZone([p, q], [s, s], rho);
        const ofSum = normalBetween(-within, within, p + q, s * Math.sqrt(2 * (1 + rho)));
        const ofDifference = normalBetween(-within, within, p - q, s * Math.sqrt(2 * (1 - rho)));
        // A value on the very limit without spread may fall to either side by rounding.
        fc.pre(Math.abs(rho) < 1 || Math.abs(Math.abs(p - rho * q) - within) > 1e-6);
        expectClose(probabilityOfConformity(zone, within), ofSum * ofDifference, NEAR);
      }),
    );
  });

  it('with one part certain is that of the other in what is left', () => {
    fc.assert(
      fc.property(value, value, standard, tolerance, (p, q, s, within) => {
        const left = within - Math.abs(p);
        const expected = normalBetween(-left, left, q, s);
        fc.pre(left !== 0);
        expectClose(probabilityOfConformity(doubleZone([p, q], [0, s]), within), expected, NEAR);
        expectClose(probabilityOfConformity(doubleZone([q, p], [s, 0]), within), expected, NEAR);
      }),
    );
  });

  it('with both parts certain is 0 or 1', () => {
    expect(probabilityOfConformity(doubleZone([2, -3], [0, 0]), 5)).toBe(1);
    expect(probabilityOfConformity(doubleZone([2, -3], [0, 0]), 4.9)).toBe(0);
  });

  it('does not depend on which part comes first, nor on their signs together', () => {
    fc.assert(
      fc.property(
        value,
        value,
        standard,
        standard,
        correlation,
        tolerance,
        (p, q, s, t, rho, within) => {
          fc.pre(Math.abs(rho) < 1);
          const probability = probabilityOfConformity(doubleZone([p, q], [s, t], rho), within);
          for (const same of [
            doubleZone([q, p], [t, s], rho),
            doubleZone([-p, -q], [s, t], rho),
            doubleZone([-p, q], [s, t], -rho),
          ]) {
            expectClose(probabilityOfConformity(same, within), probability, NEAR);
          }
        },
      ),
    );
  });

  it.each([
    [[3, 2], [1, 2], 0.5, 6],
    [[3, -2], [1, 2], 0.9, 6],
    [[0, 0], [2, 0.5], -0.7, 3],
    [[6, 1], [0.4, 1.5], 0, 7],
  ] as const)(
    'of %j ± %j, correlated by %d, within %d µm agrees with drawing lots',
    (values, standards, rho, within) => {
      const random = randomFrom(106);
      const draws = 100_000;
      let inside = 0;
      for (let draw = 0; draw < draws; draw += 1) {
        const [a, b] = [random.normal(), random.normal()];
        const p = values[0] + standards[0] * a;
        const q = values[1] + standards[1] * (rho * a + Math.sqrt(1 - rho ** 2) * b);
        if (Math.abs(p) + Math.abs(q) <= within) inside += 1;
      }
      const probability = probabilityOfConformity(doubleZone(values, standards, rho), within);
      // Four standard deviations of a binomial share: 0.6 % at most.
      const samplingError = Math.sqrt((probability * (1 - probability)) / draws);
      expect(probability).toBeGreaterThan(0.05);
      expect(probability).toBeLessThan(0.95);
      expectClose(inside / draws, probability, { absolute: 4 * samplingError });
    },
  );
});
