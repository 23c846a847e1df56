import loadHighs from 'highs';
import { describe, it } from 'vitest';
import { minimumZonePlane } from '../../../../src/core/zones/form/flatness';
import type { FacePoint } from '../../../../src/core/zones/form/points';
import { minimumZoneLine } from '../../../../src/core/zones/form/straightness';
import { expectClose } from '../../support/close';
import { manyRandoms, type Random } from '../../support/random';
import { type AnyPoint, verifyCertificate } from './support/certificate';
import {
  dualForYalps,
  forHighs,
  forYalps,
  scaledPoints,
  widthByHighs,
  widthByYalps,
} from './support/linear-programs';
import { scatteredPoints, wholePoints } from './support/points';

const SETS = 30;
const highs = await loadHighs();

type Draw = (random: Random, count: number) => readonly FacePoint[];

const DRAWS: readonly (readonly [string, Draw])[] = [
  ['scattered', scatteredPoints],
  ['on a grid of whole numbers', wholePoints],
];

function expectSameByOthers(points: readonly AnyPoint[], width: number): void {
  const scaled = scaledPoints(points);
  // Both work to a tolerance, of 1e-12 and of 1e-10 in scaled numbers.
  const allowance = { absolute: 1e-9 * scaled.unit };
  expectClose(width, widthByYalps(forYalps(scaled), scaled), allowance);
  expectClose(width, widthByYalps(dualForYalps(scaled), scaled), allowance);
  expectClose(width, widthByHighs(forHighs(scaled, highs), scaled, highs), allowance);
}

describe.each(DRAWS)('the minimum zone against yalps and HiGHS, points %s', (_, draw) => {
  it.each([5, 9, 25, 60, 200])('for planes through %d points', (count) => {
    for (const random of manyRandoms(SETS, count)) {
      const points = draw(random, count);
      const zone = minimumZonePlane(points);
      verifyCertificate(points, zone);
      expectSameByOthers(points, zone.width);
    }
  });

  it('for planes through 3000 points', () => {
    for (const random of manyRandoms(2)) {
      const points = draw(random, 3000);
      expectSameByOthers(points, minimumZonePlane(points).width);
    }
  });

  it.each([4, 9, 25, 60, 200])('for lines through %d points', (count) => {
    for (const random of manyRandoms(SETS, count)) {
      const points = draw(random, count).map(({ u, deviation }) => ({ u, deviation }));
      const zone = minimumZoneLine(points);
      verifyCertificate(points, zone);
      expectSameByOthers(points, zone.width);
    }
  });
});
