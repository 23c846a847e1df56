import { minimise } from '../../linear-program/minimise';
import { evaluate, type LinearForm } from '../../part/linear-form';
import type { PlanRow } from './rows';

/** µm by which a row may be missed for rounding. */
const ROUNDING = 1e-11;

/** A linear program by the names of its variables. */
export interface NamedProgram {
  readonly free: readonly string[];
  /** Variables that are 0 or more. */
  readonly positive: readonly string[];
  /** What rows say of other variables than these is left out: those are 0. */
  readonly rows: readonly PlanRow[];
  /** Further rows, which are taken up only where a solution does not keep to them by itself. */
  readonly seldom: readonly PlanRow[];
  /** Each to be made least without making those before it worse. */
  readonly objectives: readonly LinearForm[];
}

/**
 * The variables that make the objectives least, or undefined where none keep to all rows.
 *
 * @throws RangeError where there is no least.
 */
export function solveByName(program: NamedProgram): ReadonlyMap<string, number> | undefined {
  let { rows, seldom } = program;
  for (;;) {
    const solution = solveRows({ ...program, rows });
    const broken = solution && seldom.filter((row) => isBroken(row, solution));
    if (broken === undefined || broken.length === 0) return solution;
    rows = [...rows, ...broken];
    seldom = seldom.filter((row) => !broken.includes(row));
  }
}

function isBroken({ form, limit }: PlanRow, solution: ReadonlyMap<string, number>): boolean {
  return evaluate(form, solution) - limit > ROUNDING;
}

function solveRows(program: Omit<NamedProgram, 'seldom'>): ReadonlyMap<string, number> | undefined {
  const { free, positive, rows, objectives } = program;
  const names = [...positive, ...free];
  const places = new Map(names.map((name, place) => [name, place]));
  const dense = (form: LinearForm) => {
    const weights = new Float64Array(names.length);
    for (const [name, weight] of form) {
      const place = places.get(name);
      if (place !== undefined) weights[place] = weight;
    }
    return weights;
  };
  const answer = minimise({
    objectives: objectives.map(dense),
    rows: rows.map(({ form, limit }) => ({ weights: dense(form), sense: '<=', limit })),
    free: names.map((_, place) => place >= positive.length),
  });
  if (answer.status === 'infeasible') return undefined;
  if (answer.status === 'unbounded') throw new RangeError('The program has no least');
  return new Map(names.map((name, place) => [name, answer.variables[place]!]));
}
