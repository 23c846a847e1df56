import { inverseOf } from '../../../linear-program/inverse';
import type { Columns, Factors } from '../columns';

/** Observations to be fitted by a sum of columns, one for each unknown. */
export interface FitProblem {
  readonly columns: Columns;
  readonly observations: Float64Array;
}

/** An observation of a reference, and the side on which its error is held. */
export interface Member {
  readonly index: number;
  readonly sign: 1 | -1;
}

/**
 * One observation more than there are unknowns (Stiefel 1959): few enough for all their errors to
 * be of one size, with the signs given.
 */
export interface Reference {
  readonly members: readonly Member[];
  /** Member i is row i: 1, then its entries in the columns times its sign. */
  readonly matrix: readonly number[];
  /** Inverse of `matrix`: column i begins with the multiplier of member i, which is never below 0. */
  readonly inverse: Float64Array;
}

/** What is fitted with all errors of a reference of one size. */
export interface LevelledFit {
  readonly deviation: number;
  readonly factors: Factors;
}

export function referenceOf({ columns }: FitProblem, members: readonly Member[]): Reference {
  const matrix: number[] = [];
  for (const member of members) appendRow(columns, member, matrix);
  return { members, matrix, inverse: inverseOf(matrix, members.length) };
}

/** Appends 1, then the entries of one observation in the columns times its sign. */
export function appendRow(
  { count, a, b, c }: Columns,
  { index, sign }: Member,
  to: number[],
): void {
  to.push(1, sign * a[index]!);
  if (count > 1) to.push(sign * b[index]!);
  if (count > 2) to.push(sign * c[index]!);
}

/**
 * Levels the errors of the reference. The second round mends what the inverse has lost to rounding
 * where members lie close together (iterative refinement: Golub and Van Loan, 3.5.3).
 */
export function level({ observations }: FitProblem, reference: Reference): LevelledFit {
  const { members, matrix, inverse } = reference;
  const size = members.length;
  const solution = [0, 0, 0, 0] as [number, number, number, number];
  for (let round = 0; round < 2; round += 1) {
    const before = solution.slice();
    for (let i = 0; i < size; i += 1) {
      const { index, sign } = members[i]!;
      let error = sign * observations[index]!;
      for (let j = 0; j < size; j += 1) error -= matrix[i * size + j]! * before[j]!;
      for (let j = 0; j < size; j += 1) {
        solution[j] = solution[j]! + inverse[j * size + i]! * error;
      }
    }
  }
  const factors = { a: solution[1], b: solution[2], c: solution[3] };
  return { deviation: solution[0], factors };
}
