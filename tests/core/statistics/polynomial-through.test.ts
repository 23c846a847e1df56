import { describe, expect, it } from 'vitest';
import { gaussLegendre } from '../../../src/core/statistics/gauss-legendre';
import { polynomialThrough } from '../../../src/core/statistics/polynomial-through';
import { expectClose } from '../support/close';

describe('a polynomial through given values', () => {
  const places = [-2, -0.5, 1, 3];
  const cubic = (x: number) => 1 + x * (2 - x * (0.5 + 0.25 * x));

  it('is the one that they were taken from, between the places and on them', () => {
    const through = polynomialThrough(places);
    for (const at of [-2, -1.3, -0.5, 0, 0.999999999, 1, 2.2, 3]) {
      expectClose(through(places.map(cubic), at), cubic(at), { absolute: 1e-12 });
    }
  });

  it('comes as near to a smooth function as its degree allows', () => {
    const { places: many } = gaussLegendre(16);
    const through = polynomialThrough(many);
    for (const at of [-0.99, -0.4, 0.123, 0.8]) {
      expectClose(through(many.map(Math.exp), at), Math.exp(at), { absolute: 1e-13 });
    }
  });

  it('is a constant through one', () => {
    expectClose(polynomialThrough([5])([7], 100), 7);
  });

  it('is refused with no places, two alike, or too few values', () => {
    expect(() => polynomialThrough([])).toThrow(RangeError);
    expect(() => polynomialThrough([1, 2, 1])).toThrow(RangeError);
    expect(() => polynomialThrough([1, 2])([1], 0)).toThrow(RangeError);
  });
});
