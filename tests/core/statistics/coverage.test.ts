import { expect, it } from 'vitest';
import { isWithinDoubt } from '../../../src/core/statistics/coverage';

const estimate = (value: number) => ({
  value,
  standard: 0.01,
  degreesOfFreedom: Number.POSITIVE_INFINITY,
});

it('a sign is not sure within the expanded uncertainty, whatever the sign', () => {
  expect(isWithinDoubt(estimate(0.019))).toBe(true);
  expect(isWithinDoubt(estimate(-0.019))).toBe(true);
  expect(isWithinDoubt(estimate(0.021))).toBe(false);
  expect(isWithinDoubt(estimate(-0.021))).toBe(false);
});
