import { expect } from 'vitest';

/**
 * Digits that agree: the log relative error of McCullough, The American Statistician 52 (1998);
 * the log absolute error where 0 is asked for.
 */
function digitsOf(actual: number, certified: number): number {
  const error = Math.abs(actual - certified);
  return -Math.log10(certified === 0 ? error : error / Math.abs(certified));
}

/** Fails where any of the numbers agrees in fewer digits than `least`. */
export function expectDigits(
  actual: readonly number[],
  certified: readonly number[],
  least: number,
): void {
  expect(actual).toHaveLength(certified.length);
  const fewest = Math.min(...actual.map((value, index) => digitsOf(value, certified[index]!)));
  expect(fewest, `digits of ${actual}`).toBeGreaterThan(least);
}
