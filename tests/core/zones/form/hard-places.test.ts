import { describe, expect, it } from 'vitest';
import { minimumZonePlane } from '../../../../src/core/zones/form/flatness';
import type { FacePoint } from '../../../../src/core/zones/form/points';
import { manyRandoms, type Random } from '../../support/random';
import { verifyCertificate } from './support/certificate';
import { wholePoints } from './support/points';

type Draw = (random: Random, index: number) => FacePoint;

const whole = (random: Random, low: number, high: number) =>
  Math.floor(random.between(low, high + 1));

const HARD: readonly (readonly [string, Draw])[] = [
  [
    'a strip of a millionth of a mm',
    (random) => ({
      u: random.between(0, 100),
      v: random.between(0, 1e-6),
      deviation: random.normal(),
    }),
  ],
  [
    'nine clusters of a nanometre',
    (random) => ({
      u: 50 * whole(random, 0, 2) + random.between(0, 1e-6),
      v: 50 * whole(random, 0, 2) + random.between(0, 1e-6),
      deviation: random.normal(),
    }),
  ],
  [
    'one place a kilometre away',
    (random, index) => ({
      u: index === 0 ? 1e6 : random.between(0, 1),
      v: index === 0 ? 1e6 : random.between(0, 1),
      deviation: random.normal(),
    }),
  ],
  [
    'places over eleven powers of ten',
    (random) => ({
      u: 10 ** random.between(-9, 2),
      v: 10 ** random.between(-9, 2),
      deviation: random.normal() * 10 ** random.between(-6, 2),
    }),
  ],
  [
    'a circle, each place up or down by one',
    (random, index) => ({
      u: Math.cos((index * Math.PI) / 6),
      v: Math.sin((index * Math.PI) / 6),
      deviation: random.normal() > 0 ? 1 : -1,
    }),
  ],
  [
    'four places only',
    (random) => ({
      u: whole(random, 0, 1),
      v: whole(random, 0, 1),
      deviation: whole(random, -2, 2),
    }),
  ],
];

describe.each(HARD)('the minimum zone at hard places: %s', (_, draw) => {
  it.each([4, 7, 30])('%d points', (count) => {
    for (const random of manyRandoms(100, count)) {
      const points = Array.from({ length: count }, (_place, index) => draw(random, index));
      verifyCertificate(points, minimumZonePlane(points), 1e-9);
    }
  });
});

it.each([
  ['a bowl', (u: number, v: number) => (u - 495) ** 2 + (v - 495) ** 2],
  ['a saddle', (u: number, v: number) => (u - 495) * (v - 495)],
  ['a ridge', (u: number) => Math.abs(u - 495)],
  ['steps', (u: number, v: number) => Math.floor(u / 70) + Math.floor(v / 130)],
  ['a flat', () => 0],
] as const)('the minimum zone of 10,000 points on a grid: %s', (_, deviation) => {
  const [random] = manyRandoms(1);
  const points = wholePoints(random!, 10000).map(({ u, v }) => ({
    u,
    v,
    deviation: deviation(u, v),
  }));
  verifyCertificate(points, minimumZonePlane(points));
});

// Two readings of one place: no zone is less wide than they are apart, and this one is no wider.
it.each([
  [
    'places a millionth of a nanometre from others',
    [
      [-0.5, -39.5, -4900],
      [-0.5, -39.4999999999997, -4900],
      [-0.5, -39.5, -4900.00000000072],
      [0, -39.244999949, -4899.999999999958],
      [0, -39.5, -4899.999999999957],
      [-0.5, -39.5, -4900],
      [-0.244999949, -39.5, -4900],
    ],
    4900.00000000072 - 4900,
  ],
  [
    'places a tenth of a micrometre from others',
    [
      [0.25, 0.0001, -4899.999990499214],
      [0.5, 0, 0.000002336159],
      [-0.5, -39.1999, -4900.00001],
      [0.2501, -39.5001, -4900.00001],
      [0.25, 0, -0.00001],
      [-0.5, 0, -4899.9999934107655],
      [0.5, 0, -4900],
    ],
    4900.000002336159,
  ],
] as const)('the minimum zone is held by two readings of one place: %s', (_, places, apart) => {
  const points = places.map(([u, v, deviation]) => ({ u, v, deviation }));
  const { width } = minimumZonePlane(points);
  expect(width / apart).toBeCloseTo(1, 3);
});
