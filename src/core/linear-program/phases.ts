import { type Dictionary, pivotOn } from './dictionary';
import { countPivot, firstToBlock, NOTHING, newPace, worstOf } from './pivot-rules';
import { AT_LEAST_ZERO, FREE, ZERO } from './scaled-program';

/** An entry below this part of the greatest beside it is no pivot: it would magnify rounding. */
const NO_PIVOT = 1e-9;

/**
 * Free variables become basic for good, and slacks that must be 0 nonbasic for good, as far as the
 * rows allow.
 */
export function settle(dictionary: Dictionary): void {
  const { program, basic, nonbasic, table, width } = dictionary;
  const { kinds } = program;
  const size = (row: number, column: number) => Math.abs(table[row * width + column]!);
  for (let row = 0; row < basic.length; row += 1) {
    if (kinds[basic[row]!] !== ZERO) continue;
    const column = greatestOf(nonbasic.length, (j) =>
      kinds[nonbasic[j]!] === ZERO ? 0 : size(row, j),
    );
    if (column >= 0) pivotOn(dictionary, row, column);
  }
  for (let column = 0; column < nonbasic.length; column += 1) {
    if (kinds[nonbasic[column]!] !== FREE) continue;
    const row = greatestOf(basic.length, (i) =>
      kinds[basic[i]!] === AT_LEAST_ZERO ? size(i, column) : 0,
    );
    if (row >= 0) pivotOn(dictionary, row, column);
  }
}

/** The index with the greatest size; -1 where there is none but rounding. */
function greatestOf(count: number, sizeAt: (index: number) => number): number {
  let greatest = NO_PIVOT;
  let found = -1;
  for (let index = 0; index < count; index += 1) {
    const size = sizeAt(index);
    if (size > greatest) {
      greatest = size;
      found = index;
    }
  }
  return found;
}

/**
 * The dual simplex method (Lemke, Naval Research Logistics Quarterly 1, 1954): brings every basic
 * number that is below 0 up to it.
 *
 * @returns a row that cannot be brought up, or -1 where there is none.
 */
export function bringUp(dictionary: Dictionary): number {
  const { program, basic, nonbasic, table, width } = dictionary;
  const { kinds, rows, objectives, variables } = program;
  const costs = (rows + objectives.length) * width;
  fillCosts(dictionary, costs);
  const pace = newPace(variables, rows);
  const shortfall = (row: number) => {
    const value = table[row * width + variables]!;
    const kind = kinds[basic[row]!];
    if (kind === FREE) return 0;
    const size = kind === ZERO ? Math.abs(value) : -value;
    return size > NOTHING && size > NOTHING * greatestIn(table, row * width, variables) ? size : 0;
  };
  const room = (column: number) => Math.max(0, table[costs + column]!);
  for (;;) {
    const row = worstOf(basic, shortfall, pace);
    if (row < 0 || kinds[basic[row]!] === ZERO) return row;
    const start = row * width;
    const least = NO_PIVOT * greatestIn(table, start, variables);
    const entry = (column: number) => {
      const size = kinds[nonbasic[column]!] === AT_LEAST_ZERO ? table[start + column]! : 0;
      return size > least ? size : 0;
    };
    const column = firstToBlock(nonbasic, room, entry, pace);
    if (column < 0) return row;
    countPivot(pace, room(column) / entry(column));
    pivotOn(dictionary, row, column);
  }
}

/** Costs to choose by: those of the first objective where none is below 0, else 1 for each number. */
function fillCosts({ program, nonbasic, table, width }: Dictionary, costs: number): void {
  const { kinds, rows } = program;
  const first = table.subarray(rows * width, (rows + 1) * width);
  const isFit = nonbasic.every(
    (number, j) => kinds[number] !== AT_LEAST_ZERO || first[j]! >= -NOTHING,
  );
  if (isFit) table.set(first, costs);
  else table.fill(1, costs, costs + width);
}

/**
 * The simplex method (Dantzig, 1951), from a corner that keeps to all rows: makes `objective` least
 * without making those before it worse.
 *
 * @param held which nonbasic numbers are to stay at 0 for their sake.
 * @returns a column along which there is no least, or -1 where there is one.
 */
export function makeLeast(dictionary: Dictionary, objective: number, held: Uint8Array): number {
  const { program, basic, nonbasic, table, width } = dictionary;
  const { kinds, rows, variables } = program;
  const costs = (rows + objective) * width;
  const pace = newPace(variables, rows);
  const saving = (column: number) => {
    const number = nonbasic[column]!;
    const cost = table[costs + column]!;
    if (kinds[number] === ZERO || held[number] === 1) return 0;
    const size = kinds[number] === FREE ? Math.abs(cost) : -cost;
    return size > NOTHING && size > NOTHING * greatestInColumn(dictionary, column) ? size : 0;
  };
  const room = (row: number) => Math.max(0, table[row * width + variables]!);
  for (;;) {
    const column = worstOf(nonbasic, saving, pace);
    if (column < 0 || kinds[nonbasic[column]!] === FREE) return column;
    const least = NO_PIVOT * greatestInColumn(dictionary, column);
    const entry = (row: number) => {
      const fall = kinds[basic[row]!] === AT_LEAST_ZERO ? -table[row * width + column]! : 0;
      return fall > least ? fall : 0;
    };
    const row = firstToBlock(basic, room, entry, pace);
    if (row < 0) return column;
    countPivot(pace, room(row) / entry(row));
    pivotOn(dictionary, row, column);
  }
}

/** Marks the nonbasic numbers that would make `objective` worse. */
export function hold(dictionary: Dictionary, objective: number, held: Uint8Array): void {
  const { program, nonbasic, table, width } = dictionary;
  const costs = (program.rows + objective) * width;
  nonbasic.forEach((number, column) => {
    if (table[costs + column]! > NOTHING) held[number] = 1;
  });
}

function greatestIn(table: Float64Array, start: number, count: number): number {
  let greatest = 0;
  for (let at = start; at < start + count; at += 1) {
    greatest = Math.max(greatest, Math.abs(table[at]!));
  }
  return greatest;
}

function greatestInColumn({ program, table, width }: Dictionary, column: number): number {
  let greatest = 0;
  for (let row = 0; row < program.rows; row += 1) {
    greatest = Math.max(greatest, Math.abs(table[row * width + column]!));
  }
  return greatest;
}
