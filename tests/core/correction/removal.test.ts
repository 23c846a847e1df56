import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  atCorners,
  changeOfUnknowns,
  highSide,
  leastRemoval,
  volumeOf,
  wedgeOf,
} from '../../../src/core/correction/removal';
import { deviation, thicknessDeparture } from '../../../src/core/part/face-errors';
import { axesInFace, oppositeFace } from '../../../src/core/part/faces';
import { evaluate } from '../../../src/core/part/linear-form';
import { expectClose } from '../support/close';
import { removal } from '../support/removals';
import { BLOCK, CENTRE } from '../support/worked-block';

const NEAR = { absolute: 1e-9 };

describe('the least removal', () => {
  it('adds to no corner and spares at least one', () => {
    fc.assert(
      fc.property(removal, (one) => {
        const removals = atCorners(BLOCK, one).map((corner) => corner.removal);
        expect(removals).toHaveLength(4);
        expect(Math.min(...removals)).toBeGreaterThanOrEqual(0);
        expectClose(Math.min(...removals), 0, NEAR);
      }),
    );
  });

  it('takes its wedge at the corners of the high side, and no more anywhere', () => {
    fc.assert(
      fc.property(removal, (one) => {
        const high = highSide(one);
        const wedge = wedgeOf(BLOCK, one);
        expect(high.length).toBeGreaterThan(0);
        for (const corner of atCorners(BLOCK, one)) {
          const isHigh = high.every((side) => corner.towards.includes(side));
          if (isHigh) expectClose(corner.removal, wedge, NEAR);
          else expect(corner.removal).toBeLessThan(wedge - 1e-9);
        }
      }),
    );
  });

  it('takes as much stock as the mean of its corners over the face', () => {
    fc.assert(
      fc.property(removal, (one) => {
        const [u, v] = axesInFace(one.face);
        const corners = atCorners(BLOCK, one);
        const mean = corners.reduce((total, corner) => total + corner.removal, 0) / 4;
        const area = BLOCK.size[u] * BLOCK.size[v];
        expectClose(volumeOf(BLOCK, one), (mean * area) / 1000, NEAR);
      }),
    );
  });

  it('brings the face in, and the thickness down, by what comes off at each corner', () => {
    fc.assert(
      fc.property(removal, (one) => {
        const change = changeOfUnknowns(one);
        for (const { point, removal: off } of atCorners(BLOCK, one)) {
          expectClose(evaluate(deviation(one.face, point), change), -off, NEAR);
          expectClose(evaluate(thicknessDeparture(one.face, point), change), -off, NEAR);
          expectClose(evaluate(deviation(oppositeFace(one.face), point), change), 0);
        }
      }),
    );
  });

  it('is by hand: 0.02 µm/mm towards the left over the bottom 60 × 40', () => {
    const one = leastRemoval(BLOCK, 'bottom', { x: -0.02 });
    expect(highSide(one)).toEqual(['left']);
    expectClose(wedgeOf(BLOCK, one), 1.2);
    expectClose(one.mean, 0.6);
    expectClose(volumeOf(BLOCK, one), 1.44);
    expectClose(
      evaluate(deviation('bottom', { ...CENTRE, x: -30, z: -45 }), changeOfUnknowns(one)),
      -1.2,
    );
  });

  it('of no slope is nothing and has no high side', () => {
    const one = leastRemoval(BLOCK, 'bottom', {});
    expect(highSide(one)).toEqual([]);
    expect(wedgeOf(BLOCK, one)).toBe(0);
    expect(volumeOf(BLOCK, one)).toBe(0);
  });
});
