import { inverseOf } from './inverse';
import type { ScaledProgram } from './scaled-program';

/**
 * A program at one of its corners. Of its numbers, the variables and then the slacks of the rows,
 * as many as there are variables are 0 there: the nonbasic ones. Each basic one is a constant and a
 * sum of these (Chvátal, Linear Programming, 1983, chapters 2 and 3).
 */
export interface Dictionary {
  readonly program: ScaledProgram;
  /** The nonbasic number of each column. */
  readonly nonbasic: Int32Array;
  /** The basic number of each row. */
  readonly basic: Int32Array;
  /**
   * By rows: a row for each basic number, one for each objective, and one more for the first phase.
   * The last column is the constant.
   */
  readonly table: Float64Array;
  readonly width: number;
  /** Pivots since the table was worked out from the program itself. */
  pivots: number;
}

/** The dictionary in which all variables are 0. */
export function firstDictionary(program: ScaledProgram): Dictionary {
  const { variables, rows, weights, limits, objectives } = program;
  const width = variables + 1;
  const table = new Float64Array((rows + objectives.length + 1) * width);
  for (let i = 0; i < rows; i += 1) {
    table.set(weights.subarray(i * variables, (i + 1) * variables), i * width);
    table[i * width + variables] = -limits[i]!;
  }
  objectives.forEach((costs, k) => {
    table.set(costs, (rows + k) * width);
  });
  return {
    program,
    nonbasic: Int32Array.from({ length: variables }, (_, j) => j),
    basic: Int32Array.from({ length: rows }, (_, i) => variables + i),
    table,
    width,
    pivots: 0,
  };
}

/** The basic number of `row` and the nonbasic one of `column` change places. */
export function pivotOn(dictionary: Dictionary, row: number, column: number): void {
  const { table, width, basic, nonbasic } = dictionary;
  const start = row * width;
  const pivot = table[start + column]!;
  for (let j = 0; j < width; j += 1) table[start + j] = -table[start + j]! / pivot;
  table[start + column] = 1 / pivot;
  for (let at = 0; at < table.length; at += width) {
    const factor = table[at + column]!;
    if (at === start || factor === 0) continue;
    table[at + column] = 0;
    for (let j = 0; j < width; j += 1) table[at + j] = table[at + j]! + factor * table[start + j]!;
  }
  const leaving = basic[row]!;
  basic[row] = nonbasic[column]!;
  nonbasic[column] = leaving;
  dictionary.pivots += 1;
}

/**
 * The same dictionary worked out from the program itself: what many pivots have lost to rounding
 * is won back. Constants are mended by one round of iterative refinement (Golub and Van Loan,
 * Matrix Computations, 3.5.3).
 */
export function workedOutAfresh(dictionary: Dictionary): Dictionary {
  const { program, nonbasic, basic, width } = dictionary;
  const { variables, rows, weights, limits, objectives } = program;
  const table = new Float64Array(dictionary.table.length);
  const corner = nonbasicRows(program, nonbasic);
  const inverse = inverseOf(corner, variables);
  const point = pointAt(program, nonbasic, corner, inverse);
  for (let i = 0; i < rows; i += 1) {
    const number = basic[i]!;
    const row = table.subarray(i * width, (i + 1) * width);
    if (number < variables) {
      row.set(inverse.subarray(number * variables, (number + 1) * variables));
      row[variables] = point[number]!;
    } else {
      const at = (number - variables) * variables;
      const own = weights.subarray(at, at + variables);
      addProduct(row, own, inverse);
      row[variables] = dot(own, point) - limits[number - variables]!;
    }
  }
  objectives.forEach((costs, k) => {
    const row = table.subarray((rows + k) * width, (rows + k + 1) * width);
    addProduct(row, costs, inverse);
    mendProduct(row, costs, corner, inverse);
    row[variables] = dot(costs, point);
  });
  return { ...dictionary, table, pivots: 0 };
}

/** The rows of the nonbasic numbers: those of the program, and one entry of 1 for a variable. */
function nonbasicRows({ variables, weights }: ScaledProgram, nonbasic: Int32Array): Float64Array {
  const matrix = new Float64Array(variables * variables);
  nonbasic.forEach((number, j) => {
    if (number < variables) matrix[j * variables + number] = 1;
    else {
      const at = (number - variables) * variables;
      matrix.set(weights.subarray(at, at + variables), j * variables);
    }
  });
  return matrix;
}

/** The variables where all nonbasic numbers are 0. */
function pointAt(
  { variables, limits }: ScaledProgram,
  nonbasic: Int32Array,
  corner: Float64Array,
  inverse: Float64Array,
): Float64Array {
  const limitOf = (number: number) => (number < variables ? 0 : limits[number - variables]!);
  const point = new Float64Array(variables);
  for (let round = 0; round < 2; round += 1) {
    const missing = Float64Array.from(
      nonbasic,
      (number, j) => limitOf(number) - dot(corner.subarray(j * variables), point),
    );
    for (let i = 0; i < variables; i += 1) {
      point[i] = point[i]! + dot(inverse.subarray(i * variables), missing);
    }
  }
  return point;
}

/** Adds `weights`·`matrix` to `row`. */
function addProduct(row: Float64Array, weights: Float64Array, matrix: Float64Array): void {
  const size = weights.length;
  for (let k = 0; k < size; k += 1) {
    const weight = weights[k]!;
    if (weight === 0) continue;
    for (let j = 0; j < size; j += 1) row[j] = row[j]! + weight * matrix[k * size + j]!;
  }
}

/** One round of refinement of `row` = `costs`·`inverse`. */
function mendProduct(
  row: Float64Array,
  costs: Float64Array,
  corner: Float64Array,
  inverse: Float64Array,
): void {
  const missing = costs.slice();
  addProduct(
    missing,
    row.subarray(0, costs.length).map((entry) => -entry),
    corner,
  );
  addProduct(row, missing, inverse);
}

/** Σ of the products, over the length of the second. */
function dot(a: Float64Array, b: Float64Array): number {
  let total = 0;
  for (let i = 0; i < b.length; i += 1) total += a[i]! * b[i]!;
  return total;
}
