import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { solveLeastSquares } from '../../../../src/core/adjustment/least-squares';
import { expectClose } from '../../support/close';
import { known } from '../../support/known';
import { rowOf, type System, system, systemWithSum } from '../../support/systems';

const NEAR = { absolute: 1e-8, relative: 1e-8 };

function solve({ matrix, observations, standards }: System) {
  return solveLeastSquares(matrix, observations, standards);
}

describe('what holds for every least-squares solution', () => {
  it('leaves residuals that no column of the whitened matrix can take up', () => {
    fc.assert(
      fc.property(system, (one) => {
        const { residuals } = solve(one);
        for (let j = 0; j < one.columns; j += 1) {
          const taken = one.standards.reduce(
            (total, standard, i) =>
              total + (one.matrix[i + j * one.rows]! * residuals[i]!) / standard ** 2,
            0,
          );
          expectClose(taken, 0, { absolute: 1e-7 });
        }
      }),
    );
  });

  it('states the chi-square and the fit of its own residuals', () => {
    fc.assert(
      fc.property(system, (one) => {
        const fit = solve(one);
        const squares = one.standards.map((standard, i) => (fit.residuals[i]! / standard) ** 2);
        expectClose(
          fit.chiSquare,
          squares.reduce((total, square) => total + square, 0),
        );
        one.observations.forEach((observed, row) => {
          const fitted = known(fit.estimate(rowOf(one, row))).value;
          expectClose(fit.residuals[row], observed - fitted, NEAR);
        });
      }),
    );
  });

  it('has redundancies from 0 to 1 that add up to the rows less the rank', () => {
    fc.assert(
      fc.property(system, (one) => {
        const { rank, redundancies } = solve(one);
        let total = 0;
        for (const redundancy of redundancies) {
          expect(redundancy).toBeGreaterThanOrEqual(0);
          expect(redundancy).toBeLessThanOrEqual(1);
          total += redundancy;
        }
        expectClose(total, one.rows - rank, NEAR);
      }),
    );
  });

  it('shows in the residual of an observation its redundancy’s part of a blunder in it', () => {
    fc.assert(
      fc.property(system, fc.nat({ max: 8 }), (one, at) => {
        const row = at % one.rows;
        const spoilt = one.observations.map((value, i) => (i === row ? value + 100 : value));
        const [before, after] = [solve(one), solve({ ...one, observations: spoilt })];
        const seen = after.residuals[row]! - before.residuals[row]!;
        expectClose(seen, 100 * before.redundancies[row]!, { absolute: 1e-6 });
      }),
    );
  });

  it('has gains that make the value and its uncertainty of the observations and theirs', () => {
    fc.assert(
      fc.property(systemWithSum, ({ one, weights }) => {
        const { value, standard, gains } = known(solve(one).estimate(weights));
        const summed = gains.reduce((total, gain, i) => total + gain * one.observations[i]!, 0);
        expectClose(summed, value, NEAR);
        expectClose(
          Math.hypot(...gains.map((gain, i) => gain * one.standards[i]!)),
          standard,
          NEAR,
        );
      }),
    );
  });
});
