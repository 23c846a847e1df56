import { countVariables, type LinearProgram } from './program';

/** Passes over rows and columns; further ones change little (Fulkerson and Wolfe, SIAM Review 4, 1962). */
const PASSES = 3;

/** What a number of the simplex method may be. */
export const AT_LEAST_ZERO = 0;
export const FREE = 1;
export const ZERO = 2;

/**
 * A program with every row as `weights`·variables - limit = slack, the slack being 0 or more, or 0
 * for '='. Rows, columns, limits and costs are scaled to about 1, by powers of two: that rounds
 * nothing, and tolerances mean the same in every unit.
 */
export interface ScaledProgram {
  readonly variables: number;
  readonly rows: number;
  /** By rows: entry (i, j) is at i·variables + j. */
  readonly weights: Float64Array;
  readonly limits: Float64Array;
  readonly objectives: readonly Float64Array[];
  /** Of each variable, and then of each slack, what it may be. */
  readonly kinds: Uint8Array;
  /** A multiplier for 1 of the scaled one, in the unit of the costs; below 0 for '<='. */
  readonly rowFactors: Float64Array;
  /** A variable for 1 of the scaled one, in the unit of the limits. */
  readonly columnFactors: Float64Array;
  readonly unitOfLimits: number;
  readonly unitsOfCosts: readonly number[];
}

/** @throws RangeError where the parts of the program disagree or a number is not finite. */
export function scaleProgram(program: LinearProgram): ScaledProgram {
  const variables = countVariables(program);
  const { rows, free } = program;
  const weights = new Float64Array(rows.length * variables);
  rows.forEach((row, i) => {
    weights.set(row.weights, i * variables);
  });
  const rowFactors = Float64Array.from(rows, ({ sense }) => (sense === '<=' ? -1 : 1));
  const columnFactors = new Float64Array(variables).fill(1);
  for (let pass = 0; pass < PASSES; pass += 1) {
    rowFactors.forEach((_, i) => {
      divide(weights, i * variables, 1, variables, rowFactors, i, middleOf);
    });
    columnFactors.forEach((_, j) => {
      divide(weights, j, variables, rows.length, columnFactors, j, middleOf);
    });
  }
  rowFactors.forEach((_, i) => {
    divide(weights, i * variables, 1, variables, rowFactors, i, greatestOf);
  });
  for (let i = 0; i < rows.length; i += 1) {
    if (rowFactors[i]! > 0) continue;
    for (let at = i * variables; at < (i + 1) * variables; at += 1) weights[at] = -weights[at]!;
  }
  const limits = Float64Array.from(rows, ({ limit }, i) => limit * rowFactors[i]!);
  const objectives = program.objectives.map((costs) =>
    Float64Array.from(costs, (cost, j) => cost * columnFactors[j]!),
  );
  const kinds = new Uint8Array(variables + rows.length);
  for (let j = 0; j < variables; j += 1) kinds[j] = free?.[j] ? FREE : AT_LEAST_ZERO;
  rows.forEach(({ sense }, i) => {
    kinds[variables + i] = sense === '=' ? ZERO : AT_LEAST_ZERO;
  });
  return {
    variables,
    rows: rows.length,
    weights,
    kinds,
    rowFactors,
    columnFactors,
    limits,
    unitOfLimits: scaledToOne(limits),
    objectives,
    unitsOfCosts: objectives.map(scaledToOne),
  };
}

/** Divides a row or a column by what `unitOf` says of it, and its factor with it. */
function divide(
  weights: Float64Array,
  start: number,
  step: number,
  count: number,
  factors: Float64Array,
  index: number,
  unitOf: (weights: Float64Array, start: number, step: number, count: number) => number,
): void {
  const unit = powerOfTwo(unitOf(weights, start, step, count));
  if (unit === 1) return;
  for (let k = 0, at = start; k < count; k += 1, at += step) weights[at] = weights[at]! / unit;
  factors[index] = factors[index]! / unit;
}

/** The geometric mean of the sizes that are not 0; 0 where all are. */
function middleOf(weights: Float64Array, start: number, step: number, count: number): number {
  let logarithms = 0;
  let counted = 0;
  for (let k = 0, at = start; k < count; k += 1, at += step) {
    if (weights[at] === 0) continue;
    logarithms += Math.log2(Math.abs(weights[at]!));
    counted += 1;
  }
  return counted === 0 ? 0 : 2 ** (logarithms / counted);
}

function greatestOf(weights: Float64Array, start: number, step: number, count: number): number {
  let greatest = 0;
  for (let k = 0, at = start; k < count; k += 1, at += step) {
    greatest = Math.max(greatest, Math.abs(weights[at]!));
  }
  return greatest;
}

/** Brings the greatest of `numbers` to about 1, and gives what they were divided by. */
function scaledToOne(numbers: Float64Array): number {
  const unit = powerOfTwo(greatestOf(numbers, 0, 1, numbers.length));
  for (let i = 0; i < numbers.length; i += 1) numbers[i] = numbers[i]! / unit;
  return unit;
}

function powerOfTwo(size: number): number {
  return size === 0 ? 1 : 2 ** Math.round(Math.log2(size));
}
