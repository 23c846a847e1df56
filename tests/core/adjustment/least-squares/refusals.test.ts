import { describe, expect, it } from 'vitest';
import { solveLeastSquares } from '../../../../src/core/adjustment/least-squares';

const MATRIX = [1, 1, 1, 0, 1, 2];

function solve(
  matrix: readonly number[],
  observations: readonly number[],
  standards: readonly number[],
) {
  return () => solveLeastSquares(Float64Array.from(matrix), observations, standards);
}

describe('a problem that makes no sense is refused', () => {
  it('is otherwise solved', () => {
    expect(solve(MATRIX, [1, 2, 3], [1, 1, 1])).not.toThrow();
  });

  it.each([Number.NaN, Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY])(
    '%d anywhere',
    (bad) => {
      expect(solve([1, 1, bad, 0, 1, 2], [1, 2, 3], [1, 1, 1])).toThrow(RangeError);
      expect(solve(MATRIX, [1, bad, 3], [1, 1, 1])).toThrow(RangeError);
      expect(solve(MATRIX, [1, 2, 3], [1, 1, bad])).toThrow(RangeError);
    },
  );

  it.each([0, -0, -1])('a standard uncertainty of %d', (bad) => {
    expect(solve(MATRIX, [1, 2, 3], [1, bad, 1])).toThrow(RangeError);
  });

  it('lengths that do not fit', () => {
    expect(solve(MATRIX, [1, 2, 3], [1, 1])).toThrow(RangeError);
    expect(solve(MATRIX, [1, 2, 3, 4], [1, 1, 1, 1])).toThrow(RangeError);
  });

  it('weights for another number of unknowns', () => {
    const fit = solve(MATRIX, [1, 2, 3], [1, 1, 1])();
    expect(() => fit.estimate([1])).toThrow(RangeError);
    expect(() => fit.estimate([1, 0, 0])).toThrow(RangeError);
  });
});

describe('a problem with nothing in it', () => {
  it('fixes nothing and has no residual', () => {
    const fit = solve([], [], [])();
    expect(fit.rank).toBe(0);
    expect(fit.chiSquare).toBe(0);
    expect(fit.residuals).toHaveLength(0);
  });

  it('fixes nothing where every weight is 0, and takes the observations for residuals', () => {
    const fit = solve([0, 0], [3, 4], [1, 2])();
    expect(fit.rank).toBe(0);
    expect(fit.estimate([1])).toBeUndefined();
    expect([...fit.residuals]).toEqual([3, 4]);
    expect(fit.chiSquare).toBe(9 + 4);
    expect([...fit.redundancies]).toEqual([1, 1]);
  });
});
