/*
 * Complete orthogonal decomposition A·P = Q·[T 0; 0 0]·Z by Householder reflections with column
 * pivoting. Golub and Van Loan, Matrix Computations (4th edition), 5.4.2 (pivoting) and 5.4.7
 * (complete decomposition). It reveals the rank and never forms AᵀA.
 *
 * Matrices are stored by columns: entry (i, j) of an m-row matrix is at i + j·m.
 */

import { lengthOf } from './vector';

export interface OrthogonalDecomposition {
  readonly rows: number;
  readonly columns: number;
  readonly rank: number;
  /** The first `rank` columns of Q, rows × rank. */
  readonly range: Float64Array;
  /** T, upper triangular, rank × rank. */
  readonly triangle: Float64Array;
  /** Zᵀ put back into the order of A's columns, columns × columns: the first `rank` of its columns span the row space, the others the null space. */
  readonly directions: Float64Array;
}

/**
 * @param matrix rows × columns, by columns; it is left as it was.
 * @param tolerance the rank ends where a pivot falls below this part of the largest one.
 */
export function decompose(
  matrix: Float64Array,
  rows: number,
  columns: number,
  tolerance: number,
): OrthogonalDecomposition {
  const work = Float64Array.from(matrix);
  const { order, reflections, rank } = factorise(work, rows, columns, tolerance);
  const range = applyReflections(reflections, rows, rank);
  const { triangle, directions } = reduceToTriangle(work, rows, columns, rank, order);
  return { rows, columns, rank, range, triangle, directions };
}

interface Factorisation {
  readonly order: Int32Array;
  /** Householder vectors, each of unit length and `rows` long, zero above its own row. */
  readonly reflections: Float64Array[];
  readonly rank: number;
}

/** QR with column pivoting in place: R is left in the upper triangle of `work`. */
function factorise(
  work: Float64Array,
  rows: number,
  columns: number,
  tolerance: number,
): Factorisation {
  const order = Int32Array.from({ length: columns }, (_, j) => j);
  const reflections: Float64Array[] = [];
  let largest = 0;
  for (let k = 0; k < Math.min(rows, columns); k += 1) {
    const pivot = longestColumn(work, rows, columns, k);
    if (k === 0) largest = pivot.length;
    if (pivot.length <= tolerance * largest) break;
    swapColumns(work, rows, k, pivot.column);
    swapEntries(order, k, pivot.column);
    const vector = householder(work.subarray(k * rows, (k + 1) * rows), k);
    for (let j = k; j < columns; j += 1) {
      reflect(work.subarray(j * rows, (j + 1) * rows), vector, k);
    }
    reflections.push(vector);
  }
  return { order, reflections, rank: reflections.length };
}

/** The column from `from` on that is longest below row `from`. Lengths are taken afresh: downdating them loses digits. */
function longestColumn(work: Float64Array, rows: number, columns: number, from: number) {
  let column = from;
  let greatest = -1;
  for (let j = from; j < columns; j += 1) {
    let squares = 0;
    for (let i = from + j * rows; i < (j + 1) * rows; i += 1) squares += work[i]! * work[i]!;
    if (squares > greatest) {
      greatest = squares;
      column = j;
    }
  }
  return { column, length: Math.sqrt(Math.max(0, greatest)) };
}

/** Unit vector v, zero above `from`, for which (I - 2vvᵀ)·x has nothing below entry `from`. */
function householder(x: Float64Array, from: number): Float64Array {
  const vector = new Float64Array(x.length);
  vector.set(x.subarray(from), from);
  const length = lengthOf(vector, from);
  // The sign that adds: subtracting nearly equal numbers would lose digits.
  vector[from] = vector[from]! + (vector[from]! >= 0 ? length : -length);
  const own = lengthOf(vector, from);
  for (let i = from; i < vector.length; i += 1) vector[i] = vector[i]! / own;
  return vector;
}

/** x ← (I - 2vvᵀ)·x, where v is zero above `from`. */
function reflect(x: Float64Array, vector: Float64Array, from: number): void {
  let product = 0;
  for (let i = from; i < x.length; i += 1) product += vector[i]! * x[i]!;
  for (let i = from; i < x.length; i += 1) x[i] = x[i]! - 2 * product * vector[i]!;
}

/** The first `rank` columns of Q: the reflections applied, last first, to unit vectors. */
function applyReflections(
  reflections: readonly Float64Array[],
  rows: number,
  rank: number,
): Float64Array {
  const range = new Float64Array(rows * rank);
  for (let j = 0; j < rank; j += 1) {
    const unit = range.subarray(j * rows, (j + 1) * rows);
    unit[j] = 1;
    for (let k = reflections.length - 1; k >= 0; k -= 1) reflect(unit, reflections[k]!, k);
  }
  return range;
}

/**
 * [R11 R12] = [T 0]·Z by reflections from the right, last row first. Working on rows of R is
 * working on columns of its transpose, so that the same reflections serve.
 */
function reduceToTriangle(
  work: Float64Array,
  rows: number,
  columns: number,
  rank: number,
  order: Int32Array,
) {
  const rowsOfR = Array.from({ length: rank }, (_, i) =>
    Float64Array.from({ length: columns }, (_, j) => (j < i ? 0 : work[i + j * rows]!)),
  );
  const vectors: Float64Array[] = [];
  if (rank < columns) {
    for (let i = rank - 1; i >= 0; i -= 1) {
      const vector = rightHouseholder(rowsOfR[i]!, i, rank);
      for (let above = 0; above <= i; above += 1) reflect(rowsOfR[above]!, vector, 0);
      vectors.push(vector);
    }
  }
  const triangle = new Float64Array(rank * rank);
  for (let i = 0; i < rank; i += 1) {
    for (let j = i; j < rank; j += 1) triangle[i + j * rank] = rowsOfR[i]![j]!;
  }
  return { triangle, directions: directionsOf(vectors, columns, order) };
}

/** Like `householder`, on entry `at` of a row and its entries from `rank` on only. */
function rightHouseholder(row: Float64Array, at: number, rank: number): Float64Array {
  const compact = Float64Array.from([row[at]!, ...row.subarray(rank)]);
  const compactVector = householder(compact, 0);
  const vector = new Float64Array(row.length);
  vector[at] = compactVector[0]!;
  vector.set(compactVector.subarray(1), rank);
  return vector;
}

function directionsOf(
  vectors: readonly Float64Array[],
  columns: number,
  order: Int32Array,
): Float64Array {
  const directions = new Float64Array(columns * columns);
  for (let j = 0; j < columns; j += 1) {
    const unit = new Float64Array(columns);
    unit[j] = 1;
    // [T 0] = R·H1·H2…, so that Zᵀ = H1·H2…: the last one acts first.
    for (let k = vectors.length - 1; k >= 0; k -= 1) reflect(unit, vectors[k]!, 0);
    for (let i = 0; i < columns; i += 1) directions[order[i]! + j * columns] = unit[i]!;
  }
  return directions;
}

function swapColumns(work: Float64Array, rows: number, a: number, b: number): void {
  if (a === b) return;
  const held = work.slice(a * rows, (a + 1) * rows);
  work.copyWithin(a * rows, b * rows, (b + 1) * rows);
  work.set(held, b * rows);
}

function swapEntries(order: Int32Array, a: number, b: number): void {
  const held = order[a]!;
  order[a] = order[b]!;
  order[b] = held;
}
