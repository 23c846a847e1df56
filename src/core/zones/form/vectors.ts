/*
 * Loops over all points: with those of columns.ts, all that takes longer with more points. For
 * speed each stands in a function by itself and gives one number, with nothing done after the loop:
 * V8 compiles a long loop while it runs, and has to drop that code again, call after call, for
 * whatever follows that it has not seen by then.
 */

/** Σ a·b. */
export function dot(a: Float64Array, b: Float64Array): number {
  let total = 0;
  for (let i = 0; i < a.length; i += 1) total += a[i]! * b[i]!;
  return total;
}

/** Adds `factor` × `other` to `numbers` in place. */
export function add(numbers: Float64Array, factor: number, other: Float64Array): void {
  for (let i = 0; i < numbers.length; i += 1) numbers[i] = numbers[i]! + factor * other[i]!;
}

/** The greatest of all sizes. */
export function greatestSize(numbers: Float64Array): number {
  let greatest = 0;
  for (let i = 0; i < numbers.length; i += 1) {
    const size = Math.abs(numbers[i]!);
    if (size > greatest) greatest = size;
  }
  return greatest;
}

function sumOf(numbers: Float64Array): number {
  let sum = 0;
  for (let i = 0; i < numbers.length; i += 1) sum += numbers[i]!;
  return sum;
}

function leastOf(numbers: Float64Array): number {
  let least = Number.POSITIVE_INFINITY;
  for (let i = 0; i < numbers.length; i += 1) if (numbers[i]! < least) least = numbers[i]!;
  return least;
}

function greatestOf(numbers: Float64Array): number {
  let greatest = Number.NEGATIVE_INFINITY;
  for (let i = 0; i < numbers.length; i += 1) if (numbers[i]! > greatest) greatest = numbers[i]!;
  return greatest;
}

/** The greatest less the least. */
export function rangeOf(numbers: Float64Array): number {
  return greatestOf(numbers) - leastOf(numbers);
}

/**
 * Takes the mean off in place, scales the greatest size to 1, and returns what both were. All are
 * set to 0 where they are the same.
 */
export function standardise(numbers: Float64Array): {
  readonly mean: number;
  readonly scale: number;
} {
  const [least, greatest] = [leastOf(numbers), greatestOf(numbers)];
  if (least === greatest) {
    numbers.fill(0);
    return { mean: greatest, scale: 0 };
  }
  const mean = sumOf(numbers) / numbers.length;
  const scale = Math.max(greatest - mean, mean - least);
  shiftAndScale(numbers, mean, scale);
  return { mean, scale };
}

function shiftAndScale(numbers: Float64Array, mean: number, scale: number): void {
  for (let i = 0; i < numbers.length; i += 1) numbers[i] = (numbers[i]! - mean) / scale;
}
