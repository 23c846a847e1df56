import { inverseOf } from '../../../linear-program/inverse';
import { type Columns, errorAt, type Factors, furthestAt, worstAt } from '../columns';
import { isBelowZero } from './column-order';
import { appendRow, type FitProblem, type Member, type Reference, referenceOf } from './reference';

/** A row that stands out of those before it by less than this part of its entries adds nothing. */
const INDEPENDENT = 1e-11;

/** Weight of the smallest observations beside that of the greatest; trials left it at this. */
const FLOOR = 0.1;

/**
 * A reference to begin with: rows that are far from dependent, and the observation that is met
 * worst when those are met in full. Rows with great observations come first, for speed: that saves
 * about half the exchanges.
 *
 * @param greatest size of all observations.
 * @throws RangeError where the columns are not independent.
 */
export function startingReference(problem: FitProblem, greatest: number): Reference {
  const { columns, observations } = problem;
  const { rows, inverse } = independentRows(problem, FLOOR * greatest || 1);
  const size = columns.count;
  const factors = factorsOf(size, (j) => {
    let factor = 0;
    for (let k = 0; k < size; k += 1) factor += inverse[j * size + k]! * observations[rows[k]!]!;
    return factor;
  });
  const last = worstOfOthers(problem, factors, rows);
  const side = errorAt(columns, factors, observations, last) < 0 ? -1 : 1;
  // The last row is Σ share·row of the others, so that multipliers -share and 1 cancel.
  const entries = entriesOf(columns, last);
  const members = rows.map((index, k): Member => {
    let share = 0;
    for (let j = 0; j < size; j += 1) share += inverse[j * size + k]! * entries[j]!;
    return { index, sign: share * side > 0 ? -1 : 1 };
  });
  return inOrder(problem, [...members, { index: last, sign: side }]);
}

interface Rows {
  readonly rows: readonly number[];
  /** Inverse of the matrix of these rows. */
  readonly inverse: Float64Array;
}

/** Begins from unit rows and replaces each by the row that stands out of the others most. */
function independentRows({ columns, observations }: FitProblem, floor: number): Rows {
  const size = columns.count;
  const matrix = unitMatrix(size);
  const rows: number[] = [];
  let inverse = matrix;
  for (let k = 0; k < size; k += 1) {
    const square = factorsOf(size, (j) => inverse[j * size + k]!);
    const row = furthestAt(columns, square, observations, floor);
    const entries = entriesOf(columns, row);
    let distance = 0;
    let terms = 0;
    for (let j = 0; j < size; j += 1) {
      const term = inverse[j * size + k]! * entries[j]!;
      matrix[k * size + j] = entries[j]!;
      distance += term;
      terms += Math.abs(term);
    }
    if (!(Math.abs(distance) > INDEPENDENT * terms)) {
      throw new RangeError('The columns are not independent');
    }
    rows.push(row);
    inverse = inverseOf(matrix, size);
  }
  return { rows, inverse };
}

function unitMatrix(size: number): Float64Array {
  const matrix = new Float64Array(size * size);
  for (let at = 0; at < size * size; at += size + 1) matrix[at] = 1;
  return matrix;
}

function factorsOf(size: number, factor: (j: number) => number): Factors {
  return { a: factor(0), b: size > 1 ? factor(1) : 0, c: size > 2 ? factor(2) : 0 };
}

function entriesOf(columns: Columns, index: number): readonly number[] {
  const row: number[] = [];
  appendRow(columns, { index, sign: 1 }, row);
  return row.slice(1);
}

/** The observation with the greatest error; any other than `rows` where they have all there is. */
function worstOfOthers(
  { columns, observations }: FitProblem,
  factors: Factors,
  rows: readonly number[],
): number {
  const worst = worstAt(columns, factors, observations);
  if (!rows.includes(worst)) return worst;
  let other = 0;
  while (rows.includes(other)) other += 1;
  return other;
}

/** A member with no multiplier may stand on either side: it takes the one that the order asks for. */
function inOrder(problem: FitProblem, members: readonly Member[]): Reference {
  const reference = referenceOf(problem, members);
  const below = members.filter((_, i) => isBelowZero(reference, i));
  if (below.length === 0) return reference;
  const turned = members.map((member): Member => {
    return below.includes(member) ? { ...member, sign: member.sign > 0 ? -1 : 1 } : member;
  });
  return referenceOf(problem, turned);
}
