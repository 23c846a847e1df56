import { describe, expect, it } from 'vitest';
import { minimise } from '../../../src/core/linear-program/minimise';
import type { LinearProgram } from '../../../src/core/linear-program/program';
import { expectClose } from '../support/close';
import { manyRandoms, type Random } from '../support/random';
import { verifyAnswer } from './support/certificates';
import { minimiseByHighs } from './support/highs';
import { anyProgram, programWithOptimum, real, type Size, whole } from './support/programs';

const NUMBERS = [
  ['real numbers', real],
  ['small whole numbers', whole],
] as const;

const SIZES: readonly (readonly [Size, count: number])[] = [
  [{ variables: 4, rows: 8 }, 1000],
  [{ variables: 12, rows: 8 }, 500],
  [{ variables: 8, rows: 40 }, 500],
  [{ variables: 30, rows: 30 }, 100],
  [{ variables: 30, rows: 500 }, 15],
];

type Draw = (random: Random, most: Size, draw: typeof real) => LinearProgram;

function expectSameByHighs(program: LinearProgram): string {
  const answer = minimise(program);
  verifyAnswer(program, answer);
  const { status, value } = minimiseByHighs(program);
  // Where HiGHS has not decided, the proof stands alone.
  if (status !== 'not decided') expect(answer.status).toBe(status);
  if (answer.status !== 'optimal') return answer.status;
  const size = answer.variables.reduce(
    (total, variable, j) => total + Math.abs(variable * program.objectives[0]![j]!),
    0,
  );
  expectClose(answer.optima[0]!.value, value, { absolute: 1e-8 * (1 + size) });
  return answer.status;
}

describe.each(NUMBERS)('programs of %s', { timeout: 120_000 }, (_, draw) => {
  it.each(SIZES)('of up to %o come out as HiGHS has them', (size, count) => {
    const said = new Map<string, number>();
    for (const make of [anyProgram, programWithOptimum] satisfies Draw[]) {
      for (const random of manyRandoms(count, size.rows)) {
        const status = expectSameByHighs(make(random, size, draw));
        said.set(status, (said.get(status) ?? 0) + 1);
      }
    }
    expect(said.get('optimal')).toBeGreaterThanOrEqual(count);
  });
});
