import { type AlternativeTest, testAlternative } from './alternatives';
import { decompose, type OrthogonalDecomposition } from './orthogonal-decomposition';
import { lengthOf } from './vector';

/**
 * Pivots below this part of the largest are no information. Rounding leaves 1e-15; the least angle
 * a shop could make of two heights (1 µm in 1 m) is 1e-6.
 */
export const RANK_TOLERANCE = 1e-11;

/** A redundancy below this is rounding. */
const ROUNDING = 1e-12;

/** A row is held to lie in the row space where no more than this part of it stands outside. */
const OUTSIDE_TOLERANCE = 1e-8;

/** A linear function of the unknowns as the observations fix it. */
export interface LinearEstimate {
  readonly value: number;
  /** Standard uncertainty, from those of the observations. */
  readonly standard: number;
  /** How much the value changes per unit of each observation. */
  readonly gains: Float64Array;
}

/** A weighted least-squares problem, solved. */
export interface LeastSquares {
  readonly rank: number;
  /** The solution of least length in scaled unknowns; entries that are not fixed mean nothing alone. */
  readonly solution: Float64Array;
  /** Observation less fitted value, in the unit of the observations. */
  readonly residuals: Float64Array;
  /** Part of a blunder in each observation that shows in its own residual, 0 (unchecked) to 1. */
  readonly redundancies: Float64Array;
  /** Sum of squares of residuals over their standard uncertainties. */
  readonly chiSquare: number;
  /** `weights`·unknowns, or undefined where the observations do not fix it. */
  value(weights: ArrayLike<number>): number | undefined;
  /** The same with its uncertainty and gains. */
  estimate(weights: ArrayLike<number>): LinearEstimate | undefined;
  /** The test of an error that would shift the observations by `effects`; undefined where it barely shows. */
  test(effects: ArrayLike<number>): AlternativeTest | undefined;
}

/**
 * Weighted least squares min Σ((b - A·x)/σ)² of any rank, by an orthogonal decomposition of the
 * whitened matrix with its columns scaled to one length, so that the unit of an unknown does not
 * sway the rank. Estimable functions after Searle, Linear Models (1971), 5.4; redundancy numbers
 * after Baarda, A testing procedure for use in geodetic networks (1968).
 *
 * @param matrix A, m × n, by columns.
 * @param observations b, length m.
 * @param standards σ, length m, all above 0.
 * @throws RangeError where the lengths disagree, a σ is not above 0, or a number is not finite.
 */
export function solveLeastSquares(
  matrix: Float64Array,
  observations: ArrayLike<number>,
  standards: ArrayLike<number>,
  tolerance = RANK_TOLERANCE,
): LeastSquares {
  const rows = observations.length;
  const columns = rows === 0 ? 0 : matrix.length / rows;
  refuseNonsense(matrix, observations, standards, columns);
  const whitened = matrix.map((entry, index) => entry / standards[index % rows]!);
  const scales = scaleColumns(whitened, rows, columns);
  const parts = decompose(whitened, rows, columns, tolerance);
  const target = Float64Array.from({ length: rows }, (_, i) => observations[i]! / standards[i]!);

  const coordinates = solveTriangle(
    parts,
    transposedProduct(parts.range, rows, parts.rank, target),
  );
  const solution = Float64Array.from({ length: columns }, (_, j) => {
    let total = 0;
    for (let k = 0; k < parts.rank; k += 1) {
      total += parts.directions[j + k * columns]! * coordinates[k]!;
    }
    return total * scales[j]!;
  });
  const fits = fitOf(matrix, observations, standards, solution);
  const redundancies = redundanciesOf(parts);
  return {
    rank: parts.rank,
    solution,
    ...fits,
    redundancies,
    value: (weights) => {
      const inside = insideOf(parts, scales, weights);
      return inside && dot(inside, coordinates);
    },
    estimate: (weights) => estimate(parts, scales, standards, coordinates, weights),
    test: (effects) =>
      testAlternative({ parts, standards, residuals: fits.residuals, redundancies }, effects),
  };
}

function refuseNonsense(
  matrix: Float64Array,
  observations: ArrayLike<number>,
  standards: ArrayLike<number>,
  columns: number,
): void {
  if (!Number.isInteger(columns))
    throw new RangeError('The matrix does not have a row for each observation');
  if (standards.length !== observations.length)
    throw new RangeError('Each observation needs a standard uncertainty');
  if (!matrix.every(Number.isFinite))
    throw new RangeError('The matrix holds a number that is not finite');
  for (let i = 0; i < observations.length; i += 1) {
    if (!Number.isFinite(observations[i])) throw new RangeError(`Observation ${i} is not finite`);
    const standard = standards[i]!;
    if (!(standard > 0 && Number.isFinite(standard))) {
      throw new RangeError(`Standard uncertainty ${i} is not above 0`);
    }
  }
}

/** Scales each column to length 1 in place and returns the factors. */
function scaleColumns(matrix: Float64Array, rows: number, columns: number): Float64Array {
  const scales = new Float64Array(columns).fill(1);
  for (let j = 0; j < columns; j += 1) {
    const column = matrix.subarray(j * rows, (j + 1) * rows);
    const length = lengthOf(column);
    if (length === 0) continue;
    scales[j] = 1 / length;
    for (let i = 0; i < rows; i += 1) column[i] = column[i]! / length;
  }
  return scales;
}

/** T·y = right, solved backwards. */
function solveTriangle(parts: OrthogonalDecomposition, right: Float64Array): Float64Array {
  const { rank, triangle } = parts;
  const result = Float64Array.from(right);
  for (let i = rank - 1; i >= 0; i -= 1) {
    for (let j = i + 1; j < rank; j += 1)
      result[i] = result[i]! - triangle[i + j * rank]! * result[j]!;
    result[i] = result[i]! / triangle[i + i * rank]!;
  }
  return result;
}

/** Tᵀ·y = right, solved forwards. */
function solveTransposedTriangle(
  parts: OrthogonalDecomposition,
  right: Float64Array,
): Float64Array {
  const { rank, triangle } = parts;
  const result = Float64Array.from(right);
  for (let i = 0; i < rank; i += 1) {
    for (let j = 0; j < i; j += 1) result[i] = result[i]! - triangle[j + i * rank]! * result[j]!;
    result[i] = result[i]! / triangle[i + i * rank]!;
  }
  return result;
}

function transposedProduct(
  matrix: Float64Array,
  rows: number,
  columns: number,
  vector: ArrayLike<number>,
): Float64Array {
  return Float64Array.from({ length: columns }, (_, j) => {
    let total = 0;
    for (let i = 0; i < rows; i += 1) total += matrix[i + j * rows]! * vector[i]!;
    return total;
  });
}

function fitOf(
  matrix: Float64Array,
  observations: ArrayLike<number>,
  standards: ArrayLike<number>,
  solution: Float64Array,
) {
  const rows = observations.length;
  let chiSquare = 0;
  const residuals = Float64Array.from({ length: rows }, (_, i) => {
    let fitted = 0;
    for (let j = 0; j < solution.length; j += 1) fitted += matrix[i + j * rows]! * solution[j]!;
    const residual = observations[i]! - fitted;
    chiSquare += (residual / standards[i]!) ** 2;
    return residual;
  });
  return { residuals, chiSquare };
}

function redundanciesOf({ rows, rank, range }: OrthogonalDecomposition): Float64Array {
  return Float64Array.from({ length: rows }, (_, i) => {
    let leverage = 0;
    for (let k = 0; k < rank; k += 1) leverage += range[i + k * rows]! ** 2;
    const redundancy = 1 - leverage;
    return redundancy < ROUNDING ? 0 : redundancy;
  });
}

/** The weights along the directions that the observations fix; undefined where they reach beyond. */
function insideOf(
  parts: OrthogonalDecomposition,
  scales: Float64Array,
  weights: ArrayLike<number>,
): Float64Array | undefined {
  const { columns, rank, directions } = parts;
  if (weights.length !== columns) throw new RangeError('One weight is needed for each unknown');
  const row = Float64Array.from({ length: columns }, (_, j) => weights[j]! * scales[j]!);
  const along = transposedProduct(directions, columns, columns, row);
  if (lengthOf(along, rank) > OUTSIDE_TOLERANCE * lengthOf(row)) return undefined;
  return along.subarray(0, rank);
}

function dot(one: Float64Array, other: Float64Array): number {
  let total = 0;
  for (let k = 0; k < one.length; k += 1) total += one[k]! * other[k]!;
  return total;
}

function estimate(
  parts: OrthogonalDecomposition,
  scales: Float64Array,
  standards: ArrayLike<number>,
  coordinates: Float64Array,
  weights: ArrayLike<number>,
): LinearEstimate | undefined {
  const { rows, rank, range } = parts;
  const inside = insideOf(parts, scales, weights);
  if (inside === undefined) return undefined;
  const influence = solveTransposedTriangle(parts, inside);
  const gains = Float64Array.from({ length: rows }, (_, i) => {
    let gain = 0;
    for (let k = 0; k < rank; k += 1) gain += range[i + k * rows]! * influence[k]!;
    return gain / standards[i]!;
  });
  return { value: dot(inside, coordinates), standard: lengthOf(influence), gains };
}
