import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { solveLeastSquares } from '../../../../src/core/adjustment/least-squares';
import { expectClose } from '../../support/close';
import { known } from '../../support/known';
import { pick } from '../../support/polynomial';
import { solvedByPseudoInverse } from '../../support/pseudo-inverse';
import { type System, system, systemWithSum } from '../../support/systems';

const NEAR = { absolute: 1e-8, relative: 1e-8 };

function solve({ matrix, observations, standards }: System) {
  return solveLeastSquares(matrix, observations, standards);
}

/** Large parts that no observation sees, or none at all: whole numbers leave nothing between. */
function isSeen(unseen: readonly number[]): boolean {
  return Math.hypot(...unseen) < 1e-6;
}

describe('least squares against the pseudoinverse of ml-matrix', () => {
  it('has the same rank', () => {
    fc.assert(
      fc.property(system, (one) => {
        expect(solve(one).rank).toBe(solvedByPseudoInverse(one).rank);
      }),
    );
  });

  it('has the same value and uncertainty for whatever the observations fix', () => {
    fc.assert(
      fc.property(systemWithSum, ({ one, weights }) => {
        const estimate = known(solve(one).estimate(weights));
        const other = solvedByPseudoInverse(one);
        expectClose(estimate.value, other.value(weights), NEAR);
        expectClose(estimate.standard, other.standard(weights), NEAR);
      }),
    );
  });

  it('fixes an unknown just where every observation together sees all of it', () => {
    let [fixed, open] = [0, 0];
    fc.assert(
      fc.property(system, (one) => {
        const [solved, other] = [solve(one), solvedByPseudoInverse(one)];
        for (let place = 0; place < one.columns; place += 1) {
          const weights = pick(one.columns, place);
          const estimate = solved.estimate(weights);
          expect(estimate !== undefined).toBe(isSeen(other.unseen(weights)));
          if (estimate === undefined) open += 1;
          else {
            fixed += 1;
            expectClose(estimate.value, other.value(weights), NEAR);
            expectClose(solved.solution[place], estimate.value, NEAR);
          }
        }
      }),
    );
    // Both happen, and often.
    expect(Math.min(fixed, open)).toBeGreaterThan(50);
  });

  it('leaves open what is fixed but for a part that no observation sees', () => {
    let tried = 0;
    fc.assert(
      fc.property(systemWithSum, fc.nat({ max: 5 }), ({ one, weights }, place) => {
        const unseen = solvedByPseudoInverse(one).unseen(pick(one.columns, place % one.columns));
        fc.pre(!isSeen(unseen));
        tried += 1;
        const blurred = weights.map((weight, j) => weight + unseen[j]!);
        expect(solve(one).estimate(blurred)).toBeUndefined();
      }),
    );
    expect(tried).toBeGreaterThan(50);
  });
});
