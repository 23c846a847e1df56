/*
 * The lexicographic order that keeps the exchange from going in circles where a multiplier is 0:
 * Dantzig, Orden and Wolfe, Pacific Journal of Mathematics 5 (1955). Every column of the
 * inverse is above 0 by its first entry that is not 0, and stays so.
 */

import type { Reference } from './reference';

/** Parts of the greatest below which an entry is rounding. */
const NOTHING = 1e-12;

/** Column i of the inverse is below 0 by its first entry that is not 0. */
export function isBelowZero({ members, inverse }: Reference, i: number): boolean {
  const size = members.length;
  for (let k = 0; k < size; k += 1) {
    const entry = inverse[k * size + i]!;
    if (Math.abs(entry) > nothingIn(inverse, size, k)) return entry < 0;
  }
  return false;
}

/**
 * The member that leaves: of those whose pull is above 0, the one with the least column over
 * pull, entry by entry. Then every column stays above 0.
 *
 * @param pulls what each multiplier loses for one unit of that of the member that enters.
 */
export function leaving({ members, inverse }: Reference, pulls: readonly number[]): number {
  const size = members.length;
  let greatest = 0;
  for (const pull of pulls) if (pull > greatest) greatest = pull;
  let candidates: number[] = [];
  for (let i = 0; i < size; i += 1) if (pulls[i]! > NOTHING * greatest) candidates.push(i);
  for (let k = 0; k < size && candidates.length > 1; k += 1) {
    let step = Number.POSITIVE_INFINITY;
    for (const i of candidates) step = Math.min(step, inverse[k * size + i]! / pulls[i]!);
    const nothing = nothingIn(inverse, size, k);
    candidates = candidates.filter((i) => inverse[k * size + i]! - step * pulls[i]! <= nothing);
  }
  return candidates[0]!;
}

function nothingIn(inverse: Float64Array, size: number, k: number): number {
  let greatest = 0;
  for (let i = 0; i < size; i += 1) greatest = Math.max(greatest, Math.abs(inverse[k * size + i]!));
  return NOTHING * greatest;
}
