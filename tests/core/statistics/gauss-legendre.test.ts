import { describe, expect, it } from 'vitest';
import { gaussLegendre } from '../../../src/core/statistics/gauss-legendre';
import { expectClose } from '../support/close';

/** Abramowitz and Stegun, Table 25.4: places above 0 and their weights, from memory. */
const TABLE_25_4 = {
  2: [[0.577350269189626, 1]],
  4: [
    [0.339981043584856, 0.652145154862546],
    [0.861136311594053, 0.347854845137454],
  ],
  6: [
    [0.238619186083197, 0.467913934572691],
    [0.661209386466265, 0.360761573048139],
    [0.932469514203152, 0.17132449237917],
  ],
} as const;

describe('the quadrature of Gauss and Legendre', () => {
  it.each([2, 4, 6] as const)('with %d places is that of the table', (count) => {
    const { places, weights } = gaussLegendre(count);
    TABLE_25_4[count].forEach(([place, weight], index) => {
      const [above, below] = [count / 2 + index, count / 2 - 1 - index];
      expectClose(places[above], place, { absolute: 1e-15 });
      expectClose(places[below], -place, { absolute: 1e-15 });
      expectClose(weights[above], weight, { absolute: 1e-15 });
      expectClose(weights[below], weight, { absolute: 1e-15 });
    });
  });

  it.each([1, 2, 3, 8, 16, 40, 100])(
    'with %d places is exact up to twice as many powers less one',
    (count) => {
      const { places, weights } = gaussLegendre(count);
      const integral = (power: number) =>
        places.reduce((total, place, index) => total + weights[index]! * place ** power, 0);
      for (let power = 0; power < 2 * count; power += 1) {
        expectClose(integral(power), power % 2 === 0 ? 2 / (power + 1) : 0, { absolute: 1e-13 });
      }
      // One power more, it falls short: A&S 25.4.29, the remainder is above 0.
      if (count <= 8) expect(2 / (2 * count + 1) - integral(2 * count)).toBeGreaterThan(1e-9);
    },
  );

  it.each([0, -1, 1.5, Number.NaN])('is refused with %d places', (count) => {
    expect(() => gaussLegendre(count)).toThrow(RangeError);
  });
});
