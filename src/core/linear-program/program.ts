/** `weights`·variables, held to `limit`. */
export interface ProgramRow {
  /** One for each variable. */
  readonly weights: ArrayLike<number>;
  readonly sense: '<=' | '>=' | '=';
  readonly limit: number;
}

/** A linear program: variables that make the objectives least and keep to the rows. */
export interface LinearProgram {
  /**
   * Costs of the variables, one objective or more: each is made least among the solutions that are
   * best by those before it.
   */
  readonly objectives: readonly ArrayLike<number>[];
  readonly rows: readonly ProgramRow[];
  /** Which variables may be below 0; left out, none. */
  readonly free?: ArrayLike<boolean>;
}

/** What makes an objective least, and the proof that nothing makes it less. */
export interface Optimum {
  readonly value: number;
  /**
   * The dual solution, one for each row: what a limit higher by 1 adds to the value. Never below 0 for
   * '>=', never above it for '<='. Σ multiplier·limit is the value, and costs - Σ multiplier·weights
   * are 0 for free variables and never below 0 for others. That holds for the first objective; for
   * a later one the signs hold but where an earlier one is above 0.
   */
  readonly multipliers: Float64Array;
}

/** What became of a linear program. */
export type ProgramAnswer =
  | {
      readonly status: 'optimal';
      readonly variables: Float64Array;
      /** One for each objective. */
      readonly optima: readonly Optimum[];
    }
  | {
      readonly status: 'infeasible';
      /**
       * The proof, one for each row (Farkas, Journal für die reine und angewandte Mathematik 124,
       * 1902): signs as of multipliers, Σ certificate·weights is 0 for free variables and never
       * above 0 for others, and Σ certificate·limit is 1. No variables can keep to all rows.
       */
      readonly certificate: Float64Array;
    }
  | {
      readonly status: 'unbounded';
      /** Which objective. */
      readonly objective: number;
      /** Variables that keep to the rows; so do `variables` + t·`ray` for all t ≥ 0, ever cheaper. */
      readonly variables: Float64Array;
      readonly ray: Float64Array;
    };

/** How many variables the program has. @throws RangeError where its parts disagree or a number is not finite. */
export function countVariables({ objectives, rows, free }: LinearProgram): number {
  const [first] = objectives;
  if (first === undefined) throw new RangeError('A program has at least one objective');
  const count = first.length;
  const lists = [...objectives, ...rows.map(({ weights }) => weights)];
  if (lists.some((list) => list.length !== count) || (free ?? first).length !== count) {
    throw new RangeError('Each variable has one cost, and one weight in each row');
  }
  if (!lists.every(areFinite) || !areFinite(rows.map(({ limit }) => limit))) {
    throw new RangeError('Costs, weights and limits are finite numbers');
  }
  return count;
}

function areFinite(list: ArrayLike<number>): boolean {
  for (let i = 0; i < list.length; i += 1) if (!Number.isFinite(list[i])) return false;
  return true;
}
