import { expect, it } from 'vitest';
import { flatness } from '../../../../src/core/zones/form/flatness';
import { expectClose } from '../../support/close';
import { INTEGER_GRIDS } from './reference/integer-grids';
import { verifyCertificate } from './support/certificate';
import { gridPoints } from './support/points';

const NEAR = { absolute: 1e-12, relative: 1e-12 };

/** The places of the numbers that are as great as any, but for rounding. */
function placesOfGreatest(numbers: readonly number[]): readonly number[] {
  const greatest = Math.max(...numbers);
  return numbers.flatMap((number, index) => (number > greatest - 1e-9 ? [index] : []));
}

it.each(INTEGER_GRIDS)('$name', ({ rows, pitch, leastSquares, minimumZone, slopes, touching }) => {
  const points = gridPoints(rows, pitch);
  const found = flatness(points);
  const residuals = [...found.minimumZone.residuals];

  expectClose(found.leastSquares.width, leastSquares, NEAR);
  expectClose(found.minimumZone.width, minimumZone, NEAR);
  verifyCertificate(points, found.minimumZone);
  if (slopes) {
    expectClose(found.minimumZone.plane.slopes.u, slopes.u, NEAR);
    expectClose(found.minimumZone.plane.slopes.v, slopes.v, NEAR);
  }
  if (touching) {
    expect(placesOfGreatest(residuals)).toEqual(touching.upper);
    expect(placesOfGreatest(residuals.map((one) => -one))).toEqual(touching.lower);
  }
});
