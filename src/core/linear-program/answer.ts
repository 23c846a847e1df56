import type { Dictionary } from './dictionary';
import { NOTHING } from './pivot-rules';
import type { LinearProgram, Optimum, ProgramAnswer } from './program';
import { AT_LEAST_ZERO, FREE, type ScaledProgram } from './scaled-program';

/** Where the pivots of a program have come to an end: at an optimum, or at a row or column that says that there is none. */
export type End =
  | { readonly status: 'optimal' }
  | { readonly status: 'infeasible'; readonly row: number }
  | { readonly status: 'unbounded'; readonly objective: number; readonly column: number };

/** Reads the answer off the last dictionary, in the units of the program. */
export function answerOf(
  { objectives }: LinearProgram,
  dictionary: Dictionary,
  end: End,
): ProgramAnswer {
  const { status } = end;
  if (status === 'infeasible') return { status, certificate: certificateOf(dictionary, end.row) };
  const variables = variablesOf(dictionary);
  if (status === 'unbounded') {
    const { objective, column } = end;
    return { status, objective, variables, ray: rayOf(dictionary, objective, column) };
  }
  const optima = objectives.map((costs, k): Optimum => {
    let value = 0;
    for (let j = 0; j < variables.length; j += 1) value += costs[j]! * variables[j]!;
    return { value, multipliers: multipliersOf(dictionary, k) };
  });
  return { status, variables, optima };
}

function variablesOf({ program, basic, table, width }: Dictionary): Float64Array {
  const { variables, columnFactors, unitOfLimits, kinds } = program;
  const values = new Float64Array(variables);
  basic.forEach((number, row) => {
    if (number >= variables) return;
    const value = table[row * width + variables]!;
    const isBelow = kinds[number] === AT_LEAST_ZERO && value < 0;
    // Rounding may leave a variable a hair below 0.
    values[number] = isBelow ? 0 : value * columnFactors[number]! * unitOfLimits;
  });
  return values;
}

/**
 * Multipliers are the costs of the slacks that are nonbasic. Those of a later objective may be below
 * 0, where an earlier one holds the slack at 0.
 */
function multipliersOf({ program, nonbasic, table, width }: Dictionary, k: number): Float64Array {
  const { variables, rows, unitsOfCosts } = program;
  const multipliers = new Float64Array(rows);
  nonbasic.forEach((slack, column) => {
    if (slack < variables) return;
    const cost = table[(rows + k) * width + column]!;
    const isHeld = k > 0 && cost < -NOTHING;
    const weight = isHeld ? cost : withoutRounding(program, slack, cost);
    multipliers[slack - variables] = inRowUnits(program, slack, weight) * unitsOfCosts[k]!;
  });
  return multipliers;
}

/**
 * A basic number is constant + Σ entry·nonbasic: where it must not be below 0, the constant is, and
 * no entry is above 0, the rows of these numbers contradict each other.
 */
function certificateOf(
  { program, basic, nonbasic, table, width }: Dictionary,
  row: number,
): Float64Array {
  const { variables, rows, limits, unitOfLimits } = program;
  const certificate = new Float64Array(rows);
  // A slack that must be 0 may also be above it.
  const sign = table[row * width + variables]! < 0 ? 1 : -1;
  const own = basic[row]!;
  if (own >= variables) certificate[own - variables] = sign;
  nonbasic.forEach((number, column) => {
    if (number >= variables) certificate[number - variables] = -sign * table[row * width + column]!;
  });
  let total = 0;
  for (let i = 0; i < rows; i += 1) {
    certificate[i] = withoutRounding(program, variables + i, certificate[i]!);
    total += certificate[i]! * limits[i]!;
  }
  return certificate.map((weight, i) => {
    return inRowUnits(program, variables + i, weight) / (total * unitOfLimits);
  });
}

/** Rounding may leave the weight of an inequality a hair below 0. */
function withoutRounding({ kinds }: ScaledProgram, slack: number, weight: number): number {
  return kinds[slack] === AT_LEAST_ZERO ? Math.max(0, weight) : weight;
}

function inRowUnits({ variables, rowFactors }: ScaledProgram, slack: number, weight: number) {
  return weight * rowFactors[slack - variables]!;
}

function rayOf(
  { program, basic, nonbasic, table, width }: Dictionary,
  objective: number,
  column: number,
): Float64Array {
  const { variables, rows, columnFactors, kinds } = program;
  const number = nonbasic[column]!;
  const isUphill = table[(rows + objective) * width + column]! > 0;
  // Only a free variable can go down.
  const way = kinds[number] === FREE && isUphill ? -1 : 1;
  const ray = new Float64Array(variables);
  if (number < variables) ray[number] = way * columnFactors[number]!;
  basic.forEach((one, row) => {
    if (one < variables) ray[one] = way * table[row * width + column]! * columnFactors[one]!;
  });
  return ray;
}
