/** In a scaled program, a number below this is 0 but for rounding. */
export const NOTHING = 1e-11;

/** How far a ratio may be passed for the sake of a greater pivot (Harris, Mathematical Programming 5, 1973). */
const ALIKE = 1e-13;

/** So many pivots for each variable without a step, and Bland's rule takes over until there is one. */
const PATIENCE = 2;

/** After so many pivots for each variable and row something is wrong. */
const MOST = 200;

/**
 * How the pivots of one phase go. The rules that take few pivots may go round in a circle where
 * steps have no length; the least numbers never do (Bland, Mathematics of Operations Research 2,
 * 1977).
 */
export interface Pace {
  readonly variables: number;
  readonly rows: number;
  pivots: number;
  /** Pivots since the last step of any length. */
  idle: number;
}

export function newPace(variables: number, rows: number): Pace {
  return { variables, rows, pivots: 0, idle: 0 };
}

/** Counts a pivot whose step was `length` long. @throws RangeError where there is no end of pivots. */
export function countPivot(pace: Pace, length: number): void {
  pace.pivots += 1;
  pace.idle = length > NOTHING ? 0 : pace.idle + 1;
  if (pace.pivots > MOST * (pace.variables + pace.rows)) {
    throw new RangeError('The program does not settle');
  }
}

function isIdling({ idle, variables }: Pace): boolean {
  return idle > PATIENCE * (variables + 1);
}

/**
 * Where `excess` is greatest or, by Bland's rule, the first of `numbers` that has any; -1 where none
 * has.
 */
export function worstOf(
  numbers: Int32Array,
  excess: (index: number) => number,
  pace: Pace,
): number {
  const least = isIdling(pace);
  let found = -1;
  let greatest = NOTHING;
  for (let index = 0; index < numbers.length; index += 1) {
    const size = excess(index);
    if (!(size > (least ? NOTHING : greatest))) continue;
    if (least && found >= 0 && numbers[index]! > numbers[found]!) continue;
    found = index;
    greatest = size;
  }
  return found;
}

/**
 * The ratio test: where `room` over `entry` is least, of those with an entry above 0; of several,
 * that with the greatest entry or, by Bland's rule, the first of `numbers`. -1 where there is none.
 */
export function firstToBlock(
  numbers: Int32Array,
  room: (index: number) => number,
  entry: (index: number) => number,
  pace: Pace,
): number {
  let furthest = Number.POSITIVE_INFINITY;
  for (let index = 0; index < numbers.length; index += 1) {
    const size = entry(index);
    if (size > 0) furthest = Math.min(furthest, (room(index) + ALIKE) / size);
  }
  const least = isIdling(pace);
  let found = -1;
  for (let index = 0; index < numbers.length; index += 1) {
    const size = entry(index);
    if (!(size > 0 && room(index) <= furthest * size)) continue;
    const isBetter = found < 0 || (least ? numbers[index]! < numbers[found]! : size > entry(found));
    if (isBetter) found = index;
  }
  return found;
}
