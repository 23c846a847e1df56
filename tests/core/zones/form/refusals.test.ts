import { describe, expect, it } from 'vitest';
import {
  flatness,
  leastSquaresPlane,
  minimumZonePlane,
} from '../../../../src/core/zones/form/flatness';
import { formOf } from '../../../../src/core/zones/form/form-of';
import {
  leastSquaresLine,
  minimumZoneLine,
  straightness,
} from '../../../../src/core/zones/form/straightness';

const POINT = { u: 1, v: 2, deviation: 3 };

describe.each([
  ['flatness', flatness, ['u', 'v', 'deviation']],
  ['leastSquaresPlane', leastSquaresPlane, ['u', 'v', 'deviation']],
  ['minimumZonePlane', minimumZonePlane, ['u', 'v', 'deviation']],
  ['straightness', straightness, ['u', 'deviation']],
  ['leastSquaresLine', leastSquaresLine, ['u', 'deviation']],
  ['minimumZoneLine', minimumZoneLine, ['u', 'deviation']],
  ['formOf', formOf, ['u', 'v', 'deviation']],
] as const)('%s refuses', (_, of, names) => {
  it('no point at all', () => {
    expect(() => of([])).toThrow(RangeError);
  });

  it.each([Number.NaN, Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY])('%d', (bad) => {
    for (const name of names) {
      const points = [POINT, { ...POINT, [name]: bad }];
      expect(() => of(points)).toThrow(`Point 1: ${name} is not finite`);
    }
  });
});

it('formOf refuses points of which only some have v', () => {
  expect(() => formOf([POINT, { u: 1, deviation: 2 }])).toThrow('Point 1: v is not finite');
});

it('points so far apart that their distance is not finite are refused', () => {
  const points = [-1e308, 1e308].map((u) => ({ u, deviation: 0 }));
  expect(() => straightness(points)).toThrow('Point 1 is too far from the first');
});
