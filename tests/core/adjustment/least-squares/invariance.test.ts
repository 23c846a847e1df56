import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { solveLeastSquares } from '../../../../src/core/adjustment/least-squares';
import { expectClose } from '../../support/close';
import { known } from '../../support/known';
import { columnsOf } from '../../support/polynomial';
import { type System, system, systemWithSum } from '../../support/systems';

const NEAR = { absolute: 1e-8, relative: 1e-8 };

function solve({ matrix, observations, standards }: System) {
  return solveLeastSquares(matrix, observations, standards);
}

/** For each of six columns a power of ten, from micrometres to metres. */
const powers = fc.array(fc.integer({ min: -6, max: 6 }), { minLength: 6, maxLength: 6 });

describe('what must not sway the answer', () => {
  it('the unit of an unknown', () => {
    fc.assert(
      fc.property(systemWithSum, powers, ({ one, weights }, exponents) => {
        const unitOf = (j: number) => 10 ** exponents[j]!;
        const matrix = one.matrix.map((entry, at) => entry * unitOf(Math.floor(at / one.rows)));
        const [before, after] = [solve(one), solve({ ...one, matrix })];
        expect(after.rank).toBe(before.rank);
        const expected = known(before.estimate(weights));
        const actual = known(after.estimate(weights.map((weight, j) => weight * unitOf(j))));
        expectClose(actual.value, expected.value, NEAR);
        expectClose(actual.standard, expected.standard, NEAR);
      }),
    );
  });

  it('the unit of the observations', () => {
    fc.assert(
      fc.property(systemWithSum, powers, ({ one, weights }, [exponent]) => {
        const factor = 10 ** exponent!;
        const scaled = {
          ...one,
          observations: one.observations.map((value) => value * factor),
          standards: one.standards.map((standard) => standard * factor),
        };
        const expected = known(solve(one).estimate(weights));
        const actual = known(solve(scaled).estimate(weights));
        expectClose(actual.value / factor, expected.value, NEAR);
        expectClose(actual.standard / factor, expected.standard, NEAR);
      }),
    );
  });

  it('the order of the observations', () => {
    const keys = fc.array(fc.nat(), { minLength: 9, maxLength: 9 });
    fc.assert(
      fc.property(systemWithSum, keys, ({ one, weights }, key) => {
        const order = one.observations.map((_, row) => row).sort((a, b) => key[a]! - key[b]!);
        const matrix = one.matrix.map((_, at) => {
          const column = Math.floor(at / one.rows);
          return one.matrix[order[at % one.rows]! + column * one.rows]!;
        });
        const observations = order.map((row) => one.observations[row]!);
        const standards = order.map((row) => one.standards[row]!);
        const [before, after] = [solve(one), solve({ ...one, matrix, observations, standards })];
        const expected = known(before.estimate(weights));
        const actual = known(after.estimate(weights));
        expect(after.rank).toBe(before.rank);
        expectClose(actual.value, expected.value, NEAR);
        order.forEach((row, place) => {
          expectClose(after.redundancies[place], before.redundancies[row]!, NEAR);
        });
      }),
    );
  });

  it('a row that is there twice, with √2 times the standard uncertainty', () => {
    fc.assert(
      fc.property(system, (one) => {
        const doubled = {
          ...one,
          rows: 2 * one.rows,
          matrix: Float64Array.from({ length: 2 * one.matrix.length }, (_, at) => {
            const column = Math.floor(at / (2 * one.rows));
            return one.matrix[(at % one.rows) + column * one.rows]!;
          }),
          observations: [...one.observations, ...one.observations],
          standards: [...one.standards, ...one.standards].map((s) => s * Math.SQRT2),
        };
        const [before, after] = [solve(one), solve(doubled)];
        expectClose(after.chiSquare, before.chiSquare, NEAR);
        after.residuals.forEach((residual, row) => {
          expectClose(residual, before.residuals[row % one.rows]!, NEAR);
        });
      }),
    );
  });
});

describe('a line far from its origin', () => {
  // Normal equations, which square the condition, have been seen to give a slope of 1.25 here.
  const line = (offset: number) => {
    const x = Array.from({ length: 11 }, (_, i) => offset + i);
    const matrix = columnsOf(x, [() => 1, (at) => at]);
    return solveLeastSquares(
      matrix,
      x.map((at) => 2 * at),
      x.map(() => 1),
    ).estimate([0, 1]);
  };

  it('keeps its slope of 2 with an offset of 1e8, and the uncertainty of that slope', () => {
    const slope = known(line(1e8));
    expectClose(slope.value, 2, { absolute: 1e-8 });
    expectClose(slope.standard, 1 / Math.sqrt(110), { relative: 1e-7 });
  });

  it('has no slope rather than a wrong one where the offset drowns it', () => {
    expect(line(1e13)).toBeUndefined();
  });
});
