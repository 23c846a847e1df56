import { describe, expect, it } from 'vitest';
import { flatness } from '../../../../src/core/zones/form/flatness';
import type { FacePoint } from '../../../../src/core/zones/form/points';
import { straightness } from '../../../../src/core/zones/form/straightness';
import { expectClose } from '../../support/close';
import { verifyCertificate } from './support/certificate';

const THREE: readonly FacePoint[] = [
  { u: 0, v: 0, deviation: 3 },
  { u: 70, v: 10, deviation: -1 },
  { u: 20, v: 50, deviation: 8 },
];

describe('as many points as it takes have no form', () => {
  it.each([1, 2, 3])('%d on a face', (count) => {
    const points = THREE.slice(0, count);
    const { leastSquares, minimumZone } = flatness(points);
    expect(leastSquares.width).toBe(0);
    expect(minimumZone.width).toBe(0);
    expect(minimumZone.spread).toBe((['point', 'line', 'face'] as const)[count - 1]);
    verifyCertificate(points, minimumZone);
  });

  it.each([1, 2])('%d on a line', (count) => {
    const points = THREE.slice(0, count).map(({ u, deviation }) => ({ u, deviation }));
    const { leastSquares, minimumZone } = straightness(points);
    expect(leastSquares.width).toBe(0);
    expect(minimumZone.width).toBe(0);
    verifyCertificate(points, minimumZone);
  });

  it('three on a face are met by the plane through them', () => {
    const { plane } = flatness(THREE).minimumZone;
    for (const { u, v, deviation } of THREE) {
      const { middle, height, slopes } = plane;
      expectClose(height + slopes.u * (u - middle.u) + slopes.v * (v - middle.v), deviation);
    }
  });
});

describe('points on one line in a face', () => {
  // Away at 3 in 4, so that each step of u = 4 and v = 3 is one of 5.
  const deviations = [0, 4, 1, 7, -2, 3];
  const onFace = deviations.map((deviation, i) => ({ u: 4 * i, v: 3 * i, deviation }));
  const onLine = deviations.map((deviation, i) => ({ u: 5 * i, deviation }));
  const [face, line] = [flatness(onFace), straightness(onLine)];

  it('are as flat as the line is straight', () => {
    expect(face.minimumZone.spread).toBe('line');
    expectClose(face.leastSquares.width, line.leastSquares.width);
    expectClose(face.minimumZone.width, line.minimumZone.width);
    verifyCertificate(onFace, face.minimumZone);
  });

  it('have planes that are level across the line', () => {
    for (const kind of ['leastSquares', 'minimumZone'] as const) {
      const { u, v } = face[kind].plane.slopes;
      expectClose(-3 * u + 4 * v, 0);
      expectClose((4 * u + 3 * v) / 5, line[kind].plane.slopes.u);
    }
  });

  it.each(['u', 'v'] as const)('are so along %s too', (way) => {
    const points = onLine.map(({ u, deviation }) => ({ u: 0.1, v: 0.1, [way]: u, deviation }));
    const { minimumZone } = flatness(points);
    expect(minimumZone.spread).toBe('line');
    expectClose(minimumZone.width, line.minimumZone.width);
    verifyCertificate(points, minimumZone);
  });

  it('are so where places differ across it as rounding does', () => {
    const points = onLine.map(({ u, deviation }, i) => ({
      u,
      v: i % 2 === 0 ? 0.3 : 0.1 + 0.2,
      deviation,
    }));
    expect(points[0]!.v).not.toBe(points[1]!.v);
    const { minimumZone } = flatness(points);
    expect(minimumZone.spread).toBe('line');
    expectClose(minimumZone.width, line.minimumZone.width);
  });
});

describe('points all at one place', () => {
  const points = [4, -3, 2, 2].map((deviation) => ({ u: 12.3, v: 4.56, deviation }));

  it.each([
    ['flatness', flatness],
    ['straightness', straightness],
  ])('have the range of their deviations for %s, from a level', (_, of) => {
    const { leastSquares, minimumZone } = of(points);
    expect(leastSquares.width).toBe(7);
    expect(minimumZone.width).toBe(7);
    expect(minimumZone.spread).toBe('point');
    expect(minimumZone.plane.slopes).toEqual({ u: 0, v: 0 });
    expect(minimumZone.plane.height).toBe(0.5);
  });
});
