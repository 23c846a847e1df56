import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { flatness } from '../../../../src/core/zones/form/flatness';
import type { FacePoint } from '../../../../src/core/zones/form/points';
import { straightness } from '../../../../src/core/zones/form/straightness';
import { expectClose } from '../../support/close';
import { somePoints } from './support/points';

const ROUNDING = 1e-12;

/** The range of the deviations from the line through the first point and the last. */
function endPointRange(points: readonly FacePoint[]): number {
  const [first, last] = [points[0]!, points.at(-1)!];
  const slope = (last.deviation - first.deviation) / (last.u - first.u);
  const heights = points.map(({ u, deviation }) => deviation - slope * (u - first.u));
  return Math.max(...heights) - Math.min(...heights);
}

describe('the minimum zone', () => {
  it.each([
    ['flatness', flatness],
    ['straightness', straightness],
  ])('of %s is no wider than the least-squares range', (_, of) => {
    fc.assert(
      fc.property(somePoints, (points) => {
        const { leastSquares, minimumZone } = of(points);
        expect(minimumZone.width).toBeLessThanOrEqual(leastSquares.width + ROUNDING);
      }),
    );
  });

  it('of a part of the points is no wider than that of all', () => {
    fc.assert(
      fc.property(somePoints, fc.nat({ max: 9 }), (points, left) => {
        const some = points.filter((_, i) => i !== left);
        fc.pre(some.length > 0);
        const [part, all] = [flatness(some), flatness(points)];
        // With fewer directions to tilt in, the zone is another one.
        fc.pre(part.minimumZone.spread === all.minimumZone.spread);
        expect(part.minimumZone.width).toBeLessThanOrEqual(all.minimumZone.width + ROUNDING);
      }),
    );
  });

  it('is no wider than the end-point range, and at least half of it', () => {
    fc.assert(
      fc.property(somePoints, (some) => {
        const points = [...some].sort((a, b) => a.u - b.u);
        fc.pre(points[0]!.u < points.at(-1)!.u);
        const [ends, zone] = [endPointRange(points), straightness(points).minimumZone.width];
        expect(zone).toBeLessThanOrEqual(ends + ROUNDING);
        expect(ends).toBeLessThanOrEqual(2 * zone + ROUNDING);
      }),
    );
  });
});

describe('the least-squares range', () => {
  // No factor of 2 binds it as it does the end-point range: an outlying point draws the line.
  it('can be more than twice the minimum zone', () => {
    const group = (count: number, u: number, deviation: number) =>
      Array.from({ length: count }, () => ({ u, deviation }));
    const { leastSquares, minimumZone } = straightness([
      ...group(29, 0, 1),
      ...group(1, 0, -1),
      ...group(26, 5, -1),
      ...group(1, 10, -1),
      ...group(1, 18, 1),
    ]);
    expectClose(minimumZone.width, 2);
    expect(leastSquares.width).toBeGreaterThan(5.5);
  });
});

describe('the sag h·(2·x/L)² of an arc has straightness h', () => {
  it.each([1, 3.7, 250])('of %d µm at both ends and the middle', (h) => {
    const points = [-100, 0, 100].map((u) => ({ u, deviation: h * (u / 100) ** 2 }));
    const { leastSquares, minimumZone } = straightness(points);
    expectClose(leastSquares.width, h);
    expectClose(minimumZone.width, h);
    expectClose(minimumZone.plane.slopes.u, 0);
  });

  it('and as much by the minimum zone where the places between are uneven', () => {
    const points = [-100, -90, -30, 0, 100].map((u) => ({ u, deviation: 8 * (u / 100) ** 2 }));
    const { leastSquares, minimumZone } = straightness(points);
    expectClose(minimumZone.width, 8);
    expect(leastSquares.width).toBeGreaterThan(8.1);
  });
});
