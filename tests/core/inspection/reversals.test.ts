import { describe, it } from 'vitest';
import { adjust } from '../../../src/core/adjustment/adjustment';
import { outOfSquare, taper } from '../../../src/core/part/face-errors';
import { scaled, unknown } from '../../../src/core/part/linear-form';
import { equationsOf } from '../../../src/core/readings/equations-of';
import type { Kit } from '../../../src/core/readings/kit';
import type { Reading } from '../../../src/core/readings/reading';
import { leanOf, zeroOfSetting } from '../../../src/core/readings/unknowns';
import { FOUR_CORNERS, SQUARE_REVERSAL } from '../reference/reversals';
import { expectClose } from '../support/close';
import { known } from '../support/known';
import { assumedParallel, nose, traverse } from '../support/readings';
import { BLOCK } from '../support/worked-block';

/** An indicator with a standard uncertainty of 1 µm, and nothing else in doubt. */
const KIT: Kit = {
  indicatorResolution: Math.sqrt(12),
  indicatorError: 0,
  seating: 1e-9,
  plate: 0,
  micrometerResolution: 1e-9,
  micrometerError: 0,
  heightSetting: 0,
  leverAngle: 0,
  leverWithin: 0,
  seatingDegrees: Number.POSITIVE_INFINITY,
  warmth: 0,
};
const NEAR = { absolute: 1e-7 };

function adjusted(readings: readonly Reading[]) {
  return adjust(equationsOf(readings, BLOCK, KIT));
}

describe('the reversal of a square', () => {
  // Over 100 mm, so that a slope is seen as it is; the two sides are parallel.
  const { m1, m2, W, S, standardOfEach } = SQUARE_REVERSAL;
  const parallel = assumedParallel('right', 1e-9);

  it('by a comparator parts workpiece and set-up', () => {
    const place = { low: 0, high: 100 };
    const found = adjusted([nose('right', m1, place), nose('left', m2, place), parallel]);
    const workpiece = known(found.estimate(scaled(outOfSquare('right', 'bottom'), 100)));
    const setUp = known(found.estimate(unknown(zeroOfSetting('comparator'))));
    for (const [estimate, value] of [
      [workpiece, W],
      [setUp, S],
    ] as const) {
      expectClose(estimate.value, value, NEAR);
      expectClose(estimate.standard, standardOfEach, NEAR);
    }
  });

  it('by a column parts workpiece and lean', () => {
    const readings = [
      ...traverse('right', { 0: 7, 100: 7 + m1 }),
      ...traverse('left', { 0: 9, 100: 9 + m2 }),
    ];
    const found = adjusted([...readings, parallel]);
    expectClose(found.estimate(scaled(outOfSquare('right', 'bottom'), 100))?.value, W, NEAR);
    expectClose(found.estimate(scaled(unknown(leanOf('column')), 100))?.value, S, NEAR);
  });
});

describe('the four corners of a section', () => {
  const { m, r, c, standardOfCorner, standardOfR, correlationOfCorners } = FOUR_CORNERS;
  const CORNERS = [
    ['right', 'bottom'],
    ['right', 'top'],
    ['left', 'top'],
    ['left', 'bottom'],
  ] as const;
  const readings = CORNERS.map(([face, base], index) => nose(face, m[index]!, { base }));
  const found = adjusted(readings);
  // 74 mm is the lever of the comparator.
  const corners = CORNERS.map(([face, base]) => scaled(outOfSquare(face, base), 74));

  it('add up to nothing, which gives them and the comparator without any micrometer', () => {
    corners.forEach((corner, index) => {
      const estimate = known(found.estimate(corner));
      expectClose(estimate.value, c[index]!, NEAR);
      expectClose(estimate.standard, standardOfCorner, NEAR);
    });
    const zero = known(found.estimate(unknown(zeroOfSetting('comparator'))));
    expectClose(zero.value, r, NEAR);
    expectClose(zero.standard, standardOfR, NEAR);
  });

  it('are correlated by -1/3', () => {
    const covariance = known(found.covariance(corners[0]!, corners[2]!));
    expectClose(covariance / standardOfCorner ** 2, correlationOfCorners, NEAR);
  });

  it('give the taper too: what right and left have together on the bottom', () => {
    expectClose(found.estimate(scaled(taper('right', 'top'), 74))?.value, c[0] + c[3], NEAR);
  });
});
