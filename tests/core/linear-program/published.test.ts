import { describe, expect, it } from 'vitest';
import { minimise } from '../../../src/core/linear-program/minimise';
import type { LinearProgram, ProgramRow } from '../../../src/core/linear-program/program';
import { expectClose } from '../support/close';
import { AFIRO, AFIRO_VALUE } from './reference/afiro';
import { verifyAnswer } from './support/certificates';

function atMost(weights: readonly number[], limit: number): ProgramRow {
  return { weights, sense: '<=', limit };
}

function expectOptimum(program: LinearProgram, value: number, variables?: readonly number[]): void {
  const answer = minimise(program);
  verifyAnswer(program, answer);
  if (answer.status !== 'optimal') throw new Error(answer.status);
  expectClose(answer.optima[0]!.value, value);
  variables?.forEach((variable, j) => {
    expectClose(answer.variables[j], variable);
  });
}

describe('programs that have been published', () => {
  it('AFIRO of netlib: -4.6475314286E+02', () => {
    expect(AFIRO.rows).toHaveLength(27);
    expect(AFIRO.objectives[0]).toHaveLength(32);
    const answer = minimise(AFIRO);
    verifyAnswer(AFIRO, answer);
    if (answer.status !== 'optimal') throw new Error(answer.status);
    expectClose(answer.optima[0]!.value, AFIRO_VALUE, { absolute: 0.5e-8 });
  });

  it("Beale's, on which Dantzig's rule goes round in a circle (1955, from memory): -5/4", () => {
    const rows = [
      atMost([1 / 4, -8, -1, 9], 0),
      atMost([1 / 2, -12, -1 / 2, 3], 0),
      atMost([0, 0, 1, 0], 1),
    ];
    expectOptimum({ objectives: [[-3 / 4, 20, -1 / 2, 6]], rows }, -5 / 4, [1, 0, 1, 0]);
  });

  it("Chvátal's, which does the same (Linear Programming, 1983, chapter 3; from memory): 1", () => {
    const rows = [
      atMost([0.5, -5.5, -2.5, 9], 0),
      atMost([0.5, -1.5, -0.5, 1], 0),
      atMost([1, 0, 0, 0], 1),
    ];
    expectOptimum({ objectives: [[-10, 57, 9, 24]], rows }, -1, [1, 0, 1, 0]);
  });

  it.each([2, 3, 5, 8])(
    'the cube of Klee and Minty (1972, as Chvátal has it, chapter 4; from memory) of %d sides: 100ⁿ⁻¹',
    (sides) => {
      const each = Array.from({ length: sides }, (_, index) => index);
      const rows = each.map((i) =>
        atMost(
          each.map((j) => (j < i ? 2 * 10 ** (i - j) : j === i ? 1 : 0)),
          100 ** i,
        ),
      );
      const costs = each.map((j) => -(10 ** (sides - 1 - j)));
      expectOptimum({ objectives: [costs], rows }, -(100 ** (sides - 1)));
    },
  );
});

describe('programs by hand', () => {
  it('without rows or variables', () => {
    expectOptimum({ objectives: [[]], rows: [] }, 0, []);
    expectOptimum({ objectives: [[]], rows: [atMost([], 0), atMost([], 2)] }, 0, []);
    expectOptimum({ objectives: [[1, 0]], rows: [] }, 0, [0, 0]);
    expect(minimise({ objectives: [[]], rows: [atMost([], -1)] })).toEqual({
      status: 'infeasible',
      certificate: Float64Array.of(-1),
    });
  });

  it('x + y ≥ 2 with x + 2y least: x = 2; one more in the limit costs 1', () => {
    const program: LinearProgram = {
      objectives: [[1, 2]],
      rows: [{ weights: [1, 1], sense: '>=', limit: 2 }],
    };
    expectOptimum(program, 2, [2, 0]);
    const answer = minimise(program);
    expect(answer.status === 'optimal' && [...answer.optima[0]!.multipliers]).toEqual([1]);
  });

  it('x ≤ 1 and x ≥ 3 contradict each other: their difference says 0 ≥ 2', () => {
    const rows: ProgramRow[] = [atMost([1], 1), { weights: [1], sense: '>=', limit: 3 }];
    expect(minimise({ objectives: [[1]], rows, free: [true] })).toEqual({
      status: 'infeasible',
      certificate: Float64Array.of(-1 / 2, 1 / 2),
    });
  });

  it('x - y = 1, cheaper the further x and y go together', () => {
    const program: LinearProgram = {
      objectives: [[-1, 0]],
      rows: [{ weights: [1, -1], sense: '=', limit: 1 }],
    };
    const answer = minimise(program);
    verifyAnswer(program, answer);
    expect(answer).toEqual({
      status: 'unbounded',
      objective: 0,
      variables: Float64Array.of(1, 0),
      ray: Float64Array.of(1, 1),
    });
  });

  it('equations that say the same twice, and twice what is not the same', () => {
    const equation = (weights: number[], limit: number): ProgramRow => {
      return { weights, sense: '=', limit };
    };
    const once = equation([1, 2, 3], 6);
    expectOptimum({ objectives: [[1, 1, 0]], rows: [once, equation([2, 4, 6], 12)] }, 0, [0, 0, 2]);
    const contradiction = { objectives: [[1, 1, 0]], rows: [once, equation([2, 4, 6], 13)] };
    const answer = minimise(contradiction);
    verifyAnswer(contradiction, answer);
    expect(answer.status).toBe('infeasible');
  });
});
