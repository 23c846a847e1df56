import { describe, expect, it } from 'vitest';
import { minimise } from '../../../src/core/linear-program/minimise';
import type { LinearProgram } from '../../../src/core/linear-program/program';
import { expectClose } from '../support/close';
import { known } from '../support/known';
import { manyRandoms, type Random } from '../support/random';
import { verifyAnswer } from './support/certificates';
import { minimiseByHighs } from './support/highs';
import { programWithOptimum, whole, wholeBetween } from './support/programs';

/** Costs of whole numbers above 0 for some variables, so that many corners are equally good. */
function someCosts(random: Random, count: number): readonly number[] {
  return Array.from({ length: count }, () => Math.max(0, wholeBetween(random, -3, 3)));
}

/** A program of nonnegative costs, none of them unbounded. */
function withObjectives(random: Random, objectives: number): LinearProgram {
  const { rows, objectives: first } = programWithOptimum(random, { variables: 8, rows: 8 }, whole);
  const count = first[0]!.length;
  return { rows, objectives: Array.from({ length: objectives }, () => someCosts(random, count)) };
}

function valuesOf(program: LinearProgram): readonly number[] {
  const answer = minimise(program);
  verifyAnswer(program, answer);
  if (answer.status !== 'optimal') throw new Error(answer.status);
  return answer.optima.map(({ value }) => value);
}

describe('several objectives', { timeout: 60_000 }, () => {
  it('are each made least among what those before leave, as HiGHS does one after the other', () => {
    let given = 0;
    for (const random of manyRandoms(500)) {
      const program = withObjectives(random, 3);
      if (minimise(program).status !== 'optimal') continue;
      const values = valuesOf(program);
      let rows = program.rows;
      program.objectives.forEach((costs, k) => {
        const { status, value } = minimiseByHighs({ objectives: [costs], rows });
        expect(status).toBe('optimal');
        expectClose(values[k], value, { absolute: 1e-6 });
        rows = [...rows, { weights: costs, sense: '<=', limit: value + 1e-9 }];
      });
      const alone = valuesOf({ ...program, objectives: [known(program.objectives[1])] });
      if (values[1]! > alone[0]! + 1e-6) given += 1;
    }
    // The first objective often takes something from the second.
    expect(given).toBeGreaterThan(50);
  });

  it('come with multipliers that hold where no earlier one is above 0', () => {
    for (const random of manyRandoms(500, 2)) {
      const program = withObjectives(random, 2);
      const answer = minimise(program);
      if (answer.status !== 'optimal') continue;
      const [first, second] = answer.optima;
      const signOf = (i: number) => (program.rows[i]!.sense === '<=' ? -1 : 1);
      program.rows.forEach(({ sense }, i) => {
        if (sense === '=' || Math.abs(first!.multipliers[i]!) > 1e-9) return;
        expect(signOf(i) * second!.multipliers[i]!).toBeGreaterThanOrEqual(0);
      });
      const proved = program.rows.reduce(
        (total, { limit }, i) => total + limit * second!.multipliers[i]!,
        0,
      );
      expectClose(second!.value, proved, { absolute: 1e-9 });
    }
  });

  it('tell which one has no least', () => {
    const answer = minimise({
      objectives: [
        [1, 0],
        [0, -1],
      ],
      rows: [],
    });
    expect(answer).toMatchObject({ status: 'unbounded', objective: 1 });
  });
});
