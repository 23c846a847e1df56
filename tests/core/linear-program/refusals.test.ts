import { describe, expect, it } from 'vitest';
import { inverseOf } from '../../../src/core/linear-program/inverse';
import { minimise } from '../../../src/core/linear-program/minimise';
import type { LinearProgram } from '../../../src/core/linear-program/program';

const row = (weights: readonly number[], limit = 1) => ({ weights, sense: '<=' as const, limit });

describe('a program', () => {
  it.each<readonly [string, LinearProgram]>([
    ['without an objective', { objectives: [], rows: [] }],
    ['with costs of different lengths', { objectives: [[1, 2], [1]], rows: [] }],
    ['with a weight too few', { objectives: [[1, 2]], rows: [row([1])] }],
    ['with a weight too many', { objectives: [[1]], rows: [row([1, 2])] }],
    [
      'that says of too few variables whether they are free',
      { objectives: [[1, 2]], rows: [], free: [true] },
    ],
    ['with a cost that is no number', { objectives: [[Number.NaN]], rows: [] }],
    ['with a weight that is no number', { objectives: [[1]], rows: [row([Number.NaN])] }],
    [
      'with a limit that is infinite',
      { objectives: [[1]], rows: [row([1], Number.POSITIVE_INFINITY)] },
    ],
  ])('%s is refused', (_, program) => {
    expect(() => minimise(program)).toThrow(RangeError);
  });
});

describe('the inverse', () => {
  it('of a matrix of two by two is as by hand', () => {
    expect([...inverseOf(Float64Array.of(0, 2, 4, 8), 2)]).toEqual([-1, 0.25, 0.5, 0]);
  });

  it('of a matrix without one is refused', () => {
    expect(() => inverseOf(Float64Array.of(1, 2, 2, 4), 2)).toThrow(RangeError);
  });
});
