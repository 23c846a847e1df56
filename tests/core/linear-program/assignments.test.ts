import { describe, it } from 'vitest';
import { minimise } from '../../../src/core/linear-program/minimise';
import type { LinearProgram, ProgramRow } from '../../../src/core/linear-program/program';
import { expectClose } from '../support/close';
import { manyRandoms } from '../support/random';
import { verifyAnswer } from './support/certificates';
import { wholeBetween } from './support/programs';

/*
 * To give n jobs to n people at least cost is a linear program whose corners are the permutations
 * (Birkhoff 1946). At each corner 2n - 1 equations meet n variables above 0: half of all numbers
 * that may be basic are 0, and pivots without a step are the rule.
 */
const PEOPLE = 5;

function permutations(of: readonly number[]): readonly (readonly number[])[] {
  if (of.length === 0) return [[]];
  return of.flatMap((first) =>
    permutations(of.filter((other) => other !== first)).map((rest) => [first, ...rest]),
  );
}

function assignment(costs: readonly number[]): LinearProgram {
  const each = Array.from({ length: PEOPLE }, (_, index) => index);
  const once = (isIn: (person: number, job: number) => boolean): ProgramRow => ({
    weights: costs.map((_, at) => (isIn(Math.floor(at / PEOPLE), at % PEOPLE) ? 1 : 0)),
    sense: '=',
    limit: 1,
  });
  const rows = each.flatMap((k) => [once((person) => person === k), once((_, job) => job === k)]);
  return { objectives: [costs], rows };
}

describe('assignments', { timeout: 60_000 }, () => {
  it('cost as little as the cheapest of all permutations', () => {
    const all = permutations([0, 1, 2, 3, 4]);
    for (const random of manyRandoms(200)) {
      const costs = Array.from({ length: PEOPLE ** 2 }, () => wholeBetween(random, 0, 9));
      const cheapest = Math.min(
        ...all.map((jobs) => {
          return jobs.reduce((total, job, person) => total + costs[person * PEOPLE + job]!, 0);
        }),
      );
      const program = assignment(costs);
      const answer = minimise(program);
      verifyAnswer(program, answer);
      if (answer.status !== 'optimal') throw new Error(answer.status);
      expectClose(answer.optima[0]!.value, cheapest);
    }
  });
});
