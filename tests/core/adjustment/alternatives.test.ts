import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { solveLeastSquares } from '../../../src/core/adjustment/least-squares';
import { standardisedResidual } from '../../../src/core/statistics/outliers';
import { expectClose } from '../support/close';
import { known } from '../support/known';
import { type System, system } from '../support/systems';

const NEAR = { absolute: 1e-7, relative: 1e-7 };
/** Less of a blunder than this is told as not seen. */
const BARELY = 0.01;

function solve({ matrix, observations, standards }: System) {
  return solveLeastSquares(matrix, observations, standards);
}

const unit = (one: System, row: number) => one.standards.map((_, i) => (i === row ? 1 : 0));

/** A system with an error of some shape over its observations. */
const withShape = system.chain((one) =>
  fc
    .array(fc.integer({ min: -5, max: 5 }), { minLength: one.rows, maxLength: one.rows })
    .map((effects) => ({ one, effects })),
);

describe('an error in one observation', () => {
  it('is tested by its standardised residual, and has the likely size of a blunder', () => {
    fc.assert(
      fc.property(system, fc.nat({ max: 8 }), (one, at) => {
        const row = at % one.rows;
        const fit = solve(one);
        const redundancy = fit.redundancies[row]!;
        const test = fit.test(unit(one, row));
        expect(test !== undefined).toBe(redundancy > BARELY);
        if (test === undefined) return;
        const [residual, standard] = [fit.residuals[row]!, one.standards[row]!];
        const { statistic, size, correlations } = test;
        expectClose(statistic, known(standardisedResidual(residual, standard, redundancy)), NEAR);
        expectClose(size, residual / redundancy, NEAR);
        expectClose(correlations[row], 1, NEAR);
      }),
    );
  });
});

describe('an error of any shape', () => {
  it('has the size, the standard uncertainty and the fall of chi-square of one more unknown', () => {
    let seen = 0;
    fc.assert(
      fc.property(withShape, ({ one, effects }) => {
        const fit = solve(one);
        const test = fit.test(effects);
        if (test === undefined) return;
        seen += 1;
        const wider = solve({ ...one, matrix: Float64Array.from([...one.matrix, ...effects]) });
        const last = Float64Array.from({ length: one.columns + 1 }, (_, j) =>
          j === one.columns ? 1 : 0,
        );
        const estimate = known(wider.estimate(last));
        expectClose(test.size, estimate.value, NEAR);
        expectClose(test.standard, estimate.standard, NEAR);
        expectClose(test.statistic, test.size / test.standard, NEAR);
        expectClose(fit.chiSquare - wider.chiSquare, test.statistic ** 2, NEAR);
      }),
      { seed: 7, numRuns: 300 },
    );
    expect(seen).toBeGreaterThan(100);
  });

  it('moves with a blunder by their correlation', () => {
    let seen = 0;
    fc.assert(
      fc.property(withShape, fc.nat({ max: 8 }), ({ one, effects }, at) => {
        const row = at % one.rows;
        const fit = solve(one);
        const [before, own] = [fit.test(effects), fit.test(unit(one, row))];
        if (before === undefined || own === undefined) return;
        seen += 1;
        const observations = one.observations.map((value, i) => (i === row ? value + 100 : value));
        const spoilt = solve({ ...one, observations });
        const moved = known(spoilt.test(effects)).statistic - before.statistic;
        const ownMoved = known(spoilt.test(unit(one, row))).statistic - own.statistic;
        expectClose(moved, before.correlations[row]! * ownMoved, { absolute: 1e-6 });
        expect(Math.abs(before.correlations[row]!)).toBeLessThanOrEqual(1 + 1e-9);
      }),
      { seed: 8, numRuns: 300 },
    );
    expect(seen).toBeGreaterThan(100);
  });

  it('is not seen where an unknown takes it up, nor where there is none of it', () => {
    fc.assert(
      fc.property(system, fc.nat({ max: 5 }), (one, at) => {
        const column = at % one.columns;
        const fit = solve(one);
        const taken = one.matrix.subarray(column * one.rows, (column + 1) * one.rows);
        expect(fit.test(taken)).toBeUndefined();
        expect(fit.test(one.standards.map(() => 0))).toBeUndefined();
      }),
    );
  });

  it('is refused where it is not one finite effect for each observation', () => {
    const fit = solveLeastSquares(Float64Array.from([1, 1, 1]), [1, 2, 4], [1, 1, 1]);
    expect(fit.test([0, 0, 1])).toBeDefined();
    expect(() => fit.test([0, 1])).toThrow(RangeError);
    expect(() => fit.test([0, 0, 0, 1])).toThrow(RangeError);
    expect(() => fit.test([0, Number.NaN, 1])).toThrow(RangeError);
    expect(() => fit.test([0, Number.POSITIVE_INFINITY, 1])).toThrow(RangeError);
  });
});
