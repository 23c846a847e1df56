import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { flatness } from '../../../../src/core/zones/form/flatness';
import type { FacePoint } from '../../../../src/core/zones/form/points';
import { straightness } from '../../../../src/core/zones/form/straightness';
import { expectClose } from '../../support/close';
import { manyRandoms } from '../../support/random';
import { verifyCertificate } from './support/certificate';
import { scatteredPoints, somePoints } from './support/points';

/** Both widths by both fits: flatness, then straightness along u. */
function widths(points: readonly FacePoint[]): readonly number[] {
  return [flatness(points), straightness(points)].flatMap(({ leastSquares, minimumZone }) => [
    leastSquares.width,
    minimumZone.width,
  ]);
}

function expectSameWidths(
  actual: readonly FacePoint[],
  expected: readonly FacePoint[],
  factor = 1,
): void {
  const wanted = widths(expected);
  widths(actual).forEach((width, i) => {
    expectClose(width, factor * wanted[i]!, { absolute: 1e-11 * factor, relative: 1e-11 });
  });
  verifyCertificate(actual, flatness(actual).minimumZone);
}

const whole = fc.integer({ min: -9, max: 9 });

describe('straightness and flatness stay the same', () => {
  it('with any plane added; along u, with any line', () => {
    fc.assert(
      fc.property(somePoints, whole, whole, whole, (points, height, slopeU, slopeV) => {
        const tilted = (across: number) =>
          points.map(({ u, v, deviation }) => ({
            u,
            v,
            deviation: deviation + height + slopeU * u + across * v,
          }));
        expectSameWidths(tilted(0), points);
        expectClose(flatness(tilted(slopeV)).minimumZone.width, flatness(points).minimumZone.width);
      }),
    );
  });

  it('in other units of length, alike in both directions or not', () => {
    fc.assert(
      fc.property(somePoints, fc.constantFrom(1e-3, 25.4, 1e6), whole, (points, unit, power) => {
        const across = unit * 2 ** power;
        const scaled = points.map(({ u, v, deviation }) => ({
          u: u * unit,
          v: v * across,
          deviation,
        }));
        expectClose(flatness(scaled).minimumZone.width, flatness(points).minimumZone.width);
        expectClose(flatness(scaled).leastSquares.width, flatness(points).leastSquares.width);
      }),
    );
  });

  it('in other units of deviation, as those are', () => {
    fc.assert(
      fc.property(somePoints, fc.constantFrom(1e-6, 1 / 25.4, 1e9), (points, unit) => {
        const scaled = points.map((point) => ({ ...point, deviation: point.deviation * unit }));
        expectSameWidths(scaled, points, unit);
      }),
    );
  });

  it('upside down', () => {
    fc.assert(
      fc.property(somePoints, (points) => {
        const turned = points.map((point) => ({ ...point, deviation: -point.deviation }));
        expectSameWidths(turned, points);
      }),
    );
  });

  it('in any order', () => {
    const keys = fc.array(fc.nat(), { minLength: 10, maxLength: 10 });
    fc.assert(
      fc.property(somePoints, keys, (points, key) => {
        const order = points.map((_, i) => i).sort((a, b) => key[a]! - key[b]!);
        expectSameWidths(
          order.map((i) => points[i]!),
          points,
        );
      }),
    );
  });

  it('with every point there twice', () => {
    fc.assert(
      fc.property(somePoints, (points) => {
        expectSameWidths([...points, ...points], points);
      }),
    );
  });
});

describe('far from the origin no digit is lost', () => {
  /** Places to 2⁻¹⁰ mm and deviations to 2⁻¹⁰ µm stay exact beside a million. */
  const binary = (number: number) => Math.round(number * 1024) / 1024;

  it.each([1e6, -3e6, 1e9])('places and deviations by %d', (offset) => {
    for (const random of manyRandoms(50)) {
      const points = scatteredPoints(random, 40).map(({ u, v, deviation }) => ({
        u: binary(u),
        v: binary(v),
        deviation: binary(deviation),
      }));
      const moved = points.map(({ u, v, deviation }) => ({
        u: u + offset,
        v: v - 2 * offset,
        deviation: deviation + offset,
      }));
      const [near, far] = [flatness(points), flatness(moved)];
      for (const kind of ['leastSquares', 'minimumZone'] as const) {
        expectClose(far[kind].width, near[kind].width, { relative: 1e-14 });
        expectClose(far[kind].plane.slopes.u, near[kind].plane.slopes.u, { absolute: 1e-15 });
        expectClose(far[kind].plane.slopes.v, near[kind].plane.slopes.v, { absolute: 1e-15 });
      }
      expect(far.minimumZone.upper.map(({ index }) => index)).toEqual(
        near.minimumZone.upper.map(({ index }) => index),
      );
    }
  });
});

it('what was found stays as it is when other points are fitted', () => {
  const [random] = manyRandoms(1);
  const one = scatteredPoints(random!, 30);
  for (const of of [flatness, straightness]) {
    const found = of(one);
    const before = structuredClone(found);
    of(scatteredPoints(random!, 40));
    of(one.slice(0, 3));
    expect(found).toEqual(before);
  }
});

it('few points have residuals of their own too', () => {
  const points = [
    { u: 0, v: 0, deviation: 5 },
    { u: 10, v: 0, deviation: 1 },
    { u: 0, v: 10, deviation: 2 },
  ];
  const { leastSquares, minimumZone } = flatness(points);
  flatness(points.map((point, i) => ({ ...point, u: i })).concat(points));
  expect([...leastSquares.residuals]).toEqual([0, 0, 0]);
  expect([...minimumZone.residuals]).toEqual([0, 0, 0]);
});
