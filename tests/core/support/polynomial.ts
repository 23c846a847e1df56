import {
  type LeastSquares,
  RANK_TOLERANCE,
  solveLeastSquares,
} from '../../../src/core/adjustment/least-squares';

/** A matrix by columns with one row for each of `x` and one column for each of `functions`. */
export function columnsOf(
  x: readonly number[],
  functions: readonly ((x: number) => number)[],
): Float64Array {
  return Float64Array.from(functions.flatMap((column) => x.map(column)));
}

/** The polynomial of this degree through `y` at `x`, all readings with standard uncertainty 1. */
export function fitPolynomial(
  x: readonly number[],
  y: readonly number[],
  degree: number,
  tolerance = RANK_TOLERANCE,
): LeastSquares {
  const powers = Array.from({ length: degree + 1 }, (_, power) => (at: number) => at ** power);
  return solveLeastSquares(
    columnsOf(x, powers),
    y,
    x.map(() => 1),
    tolerance,
  );
}

/** The weights that pick one of `count` unknowns. */
export function pick(count: number, place: number): Float64Array {
  const weights = new Float64Array(count);
  weights[place] = 1;
  return weights;
}

/** Standard deviation of one reading, from the residuals. */
export function residualStandardDeviation(fit: LeastSquares): number {
  return Math.sqrt(fit.chiSquare / (fit.residuals.length - fit.rank));
}
