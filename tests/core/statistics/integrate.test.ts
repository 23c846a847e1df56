import { describe, expect, it } from 'vitest';
import { integrate } from '../../../src/core/statistics/integrate';
import { expectClose } from '../support/close';

describe('an integral', () => {
  it.each([
    [
      '1 + 2x + 3x² + 4x³ from -1 to 2',
      (x: number) => 1 + 2 * x + 3 * x ** 2 + 4 * x ** 3,
      -1,
      2,
      30,
    ],
    ['exp from 0 to 1', Math.exp, 0, 1, Math.E - 1],
    [
      'a peak 1/1000 of the way wide',
      (x: number) => 1e-3 / (1e-6 + (x - 0.3) ** 2),
      0,
      1,
      Math.atan(300) + Math.atan(700),
    ],
    ['a bend', (x: number) => Math.abs(x - Math.SQRT1_2), 0, 1, 1 - Math.SQRT1_2],
    ['a jump', (x: number) => (x < 1 / 3 ? 1 : 0), 0, 1, 1 / 3],
  ] as const)('of %s', (_, f, from, to, exact) => {
    expectClose(integrate(f, from, to, 1e-10), exact, { absolute: 1e-9 });
  });

  it('ends, as near as rounding allows, where the tolerance is finer than that', () => {
    expectClose(integrate(Math.exp, 0, 5, 0), Math.expm1(5), { relative: 1e-15 });
    expectClose(integrate(Math.sin, -3, 3, 1e-30), 0, { absolute: 1e-14 });
  });

  it('is not a number where the function is not', () => {
    expect(integrate((x) => (x > 0.7 ? Number.NaN : 1), 0, 1, 1e-10)).toBeNaN();
    expect(integrate(Math.exp, Number.NaN, 1, 1e-10)).toBeNaN();
  });

  it('is nothing over no way, or a way back', () => {
    expect(integrate(Math.exp, 1, 1, 1e-10)).toBe(0);
    expect(integrate(Math.exp, 2, 1, 1e-10)).toBe(0);
  });
});
