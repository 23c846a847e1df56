import { expect, it } from 'vitest';
import type { Estimate } from '../../../src/core/adjustment/adjustment';
import { scaledEstimate } from '../../../src/core/adjustment/scaled-estimate';

it('is the estimate as many times, its doubts without the sign', () => {
  const estimate: Estimate = {
    value: 6,
    standard: 5,
    degreesOfFreedom: 7,
    contributions: [
      { cause: 'seating', standard: 4, degreesOfFreedom: 3 },
      { cause: 'plate', standard: 3, degreesOfFreedom: Number.POSITIVE_INFINITY },
    ],
    terms: [
      { reading: 'right', value: 8, weight: 0.5 },
      { reading: 'left', value: -4, weight: -0.5 },
    ],
    restsOn: new Set(['right', 'left']),
  };
  expect(scaledEstimate(estimate, -2)).toEqual({
    ...estimate,
    value: -12,
    standard: 10,
    contributions: [
      { cause: 'seating', standard: 8, degreesOfFreedom: 3 },
      { cause: 'plate', standard: 6, degreesOfFreedom: Number.POSITIVE_INFINITY },
    ],
    terms: [
      { reading: 'right', value: 8, weight: -1 },
      { reading: 'left', value: -4, weight: 1 },
    ],
  });
});
