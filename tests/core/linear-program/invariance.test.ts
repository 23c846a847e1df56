import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { minimise } from '../../../src/core/linear-program/minimise';
import type { LinearProgram, ProgramRow } from '../../../src/core/linear-program/program';
import { expectClose } from '../support/close';
import { randomFrom } from '../support/random';
import { verifyAnswer } from './support/certificates';
import { anyProgram, whole } from './support/programs';

const program = fc
  .integer()
  .map((seed) => anyProgram(randomFrom(seed), { variables: 6, rows: 10 }, whole));

/** fast-check's: the same programs each time. */
const RUNS = { numRuns: 300, seed: 1 };

const factor = fc.integer({ min: -30, max: 30 }).map((tenths) => 10 ** (tenths / 10));
const factors = fc.array(factor, { minLength: 10, maxLength: 10 });

/** Status, and the value where there is one. */
function said(one: LinearProgram): readonly [string, number | undefined] {
  const answer = minimise(one);
  return [answer.status, answer.status === 'optimal' ? answer.optima[0]!.value : undefined];
}

function expectSame(one: LinearProgram, other: LinearProgram, times = 1): void {
  const [[status, value], [otherStatus, otherValue]] = [said(one), said(other)];
  expect(otherStatus).toBe(status);
  if (value === undefined) return;
  expectClose(otherValue, value * times, { absolute: 1e-9 * times, relative: 1e-9 });
}

const OPPOSITE = { '<=': '>=', '>=': '<=', '=': '=' } as const;

describe('the answer stays the same', { timeout: 60_000 }, () => {
  it('in other units of rows, of variables, of costs and of limits', () => {
    fc.assert(
      fc.property(program, factors, factors, factor, factor, (one, perRow, perColumn, c, l) => {
        const costs = Array.from(one.objectives[0]!, (cost, j) => cost * perColumn[j]! * c);
        const rows = one.rows.map(({ weights, sense, limit }, i) => ({
          weights: Array.from(weights, (weight, j) => weight * perRow[i]! * perColumn[j]!),
          sense,
          limit: limit * perRow[i]! * l,
        }));
        expectSame(one, { ...one, objectives: [costs], rows }, c * l);
      }),
      RUNS,
    );
  });

  it('in another order of rows and of variables', () => {
    fc.assert(
      fc.property(program, (one) => {
        const turned = (list: ArrayLike<number>) => Array.from(list).reverse();
        const rows = one.rows.map((row) => ({ ...row, weights: turned(row.weights) })).reverse();
        const objectives = one.objectives.map(turned);
        expectSame(one, { objectives, rows, free: Array.from(one.free!).reverse() });
      }),
      RUNS,
    );
  });

  it('with each row the other way round, and its multiplier with it', () => {
    fc.assert(
      fc.property(program, (one) => {
        const rows = one.rows.map(({ weights, sense, limit }): ProgramRow => {
          const opposite = Array.from(weights, (weight) => -weight);
          return { weights: opposite, sense: OPPOSITE[sense], limit: -limit };
        });
        expectSame(one, { ...one, rows });
        verifyAnswer({ ...one, rows }, minimise({ ...one, rows }));
      }),
      RUNS,
    );
  });

  it('with an equation as two rows, and with a free variable as the difference of two', () => {
    fc.assert(
      fc.property(program, (one) => {
        const both = ['<=', '>='] as const;
        const rows = one.rows.flatMap((row): ProgramRow[] =>
          row.sense === '=' ? both.map((sense) => ({ ...row, sense })) : [row],
        );
        expectSame(one, { ...one, rows });
        const split = (list: ArrayLike<number>) => [
          ...Array.from(list),
          ...Array.from(list).flatMap((entry, j) => (one.free![j] ? [-entry] : [])),
        ];
        expectSame(one, {
          objectives: one.objectives.map(split),
          rows: one.rows.map((row) => ({ ...row, weights: split(row.weights) })),
        });
      }),
      RUNS,
    );
  });

  it('as that of the dual program', () => {
    fc.assert(
      fc.property(program, (one) => {
        const [status, value] = said(one);
        const signs = one.rows.map(({ sense }) => (sense === '<=' ? -1 : 1));
        const dual: LinearProgram = {
          objectives: [one.rows.map(({ limit }, i) => -limit * signs[i]!)],
          rows: Array.from(one.objectives[0]!, (limit, j) => ({
            weights: one.rows.map(({ weights }, i) => weights[j]! * signs[i]!),
            sense: one.free![j] ? '=' : '<=',
            limit,
          })),
          free: one.rows.map(({ sense }) => sense === '='),
        };
        const [statusOfDual, valueOfDual] = said(dual);
        if (value !== undefined) expectClose(-valueOfDual!, value, { absolute: 1e-9 });
        // Without a least the dual contradicts itself; contradictory, it has no least or is so too.
        if (status === 'unbounded') expect(statusOfDual).toBe('infeasible');
        if (status === 'infeasible') expect(statusOfDual).not.toBe('optimal');
      }),
      RUNS,
    );
  });
});
