import { expect } from 'vitest';

/** How far apart two numbers may be: the two allowances add, so that numbers near 0 can pass too. */
export interface Allowance {
  readonly absolute?: number;
  readonly relative?: number;
}

/** Fails where `actual` is further from `expected` than is allowed, or where either is not a number. */
export function expectClose(
  actual: number | undefined,
  expected: number,
  { absolute = 0, relative = 0 }: Allowance = { absolute: 1e-12, relative: 1e-12 },
): void {
  const difference = Math.abs((actual ?? Number.NaN) - expected);
  expect(difference, `${actual} against ${expected}`).toBeLessThanOrEqual(
    absolute + relative * Math.abs(expected),
  );
}
