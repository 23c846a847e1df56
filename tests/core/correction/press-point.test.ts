import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { pressDistances, pressPoint } from '../../../src/core/correction/press-point';
import { atCorners, highSide, leastRemoval } from '../../../src/core/correction/removal';
import { axesInFace, outwardNormal } from '../../../src/core/part/faces';
import { ECCENTRIC_LOADS } from '../reference/eccentric-load';
import { expectClose } from '../support/close';
import { removal } from '../support/removals';
import { BLOCK } from '../support/worked-block';

describe('where to press', () => {
  it.each(ECCENTRIC_LOADS)('is $e off the middle for a pressure from $low to $high', (load) => {
    const { P, B, L, e, high, low } = load;
    // The top of a block B × L; removal stands for pressure.
    const block = { size: { x: B, y: L, z: 1 } };
    const one = { face: 'top' as const, mean: P / (B * L), slopes: { x: (high - low) / B } };
    const removals = atCorners(block, one).map((corner) => corner.removal);

    expectClose(Math.max(...removals), high);
    expectClose(Math.min(...removals), low, { absolute: 1e-12 });
    expectClose(pressPoint(block, one).x, e);
    expectClose(pressPoint(block, one).y, 0);
  });

  it('gives back, by linear pressure, the removal that was asked for', () => {
    fc.assert(
      fc.property(removal, fc.integer({ min: 0, max: 9 }), (least, more) => {
        const one = { ...least, mean: least.mean + more };
        const point = pressPoint(BLOCK, one);
        for (const corner of atCorners(BLOCK, one)) {
          const relative = axesInFace(one.face).reduce(
            (total, axis) =>
              total + (12 * point[axis]! * corner.point[axis]) / BLOCK.size[axis] ** 2,
            1,
          );
          expectClose(one.mean * relative, corner.removal, { absolute: 1e-9 });
        }
      }),
    );
  });

  it('is on the edge of the kern for a wedge that feathers out, and within it for a deeper cut', () => {
    fc.assert(
      fc.property(removal, (least) => {
        const outness = (one: typeof least) =>
          axesInFace(one.face).reduce(
            (total, axis) => total + Math.abs(pressPoint(BLOCK, one)[axis]!) / BLOCK.size[axis],
            0,
          );
        expectClose(outness(least), 1 / 6);
        expect(outness({ ...least, mean: least.mean * 1.01 })).toBeLessThan(1 / 6 - 1e-4);
      }),
    );
  });

  it('is a third in from the high edge for a wedge along one axis', () => {
    const wedge = leastRemoval(BLOCK, 'right', { z: 0.02 });
    expectClose(45 - pressPoint(BLOCK, wedge).z!, 90 / 3);
    expectClose(pressPoint(BLOCK, wedge).y, 0);
    expect(pressDistances(BLOCK, wedge)).toEqual([{ from: 'top', distance: 30 }]);
  });

  it('is told in mm in from each high edge, to where it is from the middle', () => {
    fc.assert(
      fc.property(removal, (one) => {
        const point = pressPoint(BLOCK, one);
        const distances = pressDistances(BLOCK, one);
        expect(distances.map(({ from }) => from)).toEqual(highSide(one));
        for (const { from, distance } of distances) {
          const { axis, sign } = outwardNormal(from);
          expectClose(BLOCK.size[axis] / 2 - distance, sign * point[axis]!, { absolute: 1e-12 });
        }
      }),
    );
  });

  it('is nowhere where nothing comes off', () => {
    expect(() => pressPoint(BLOCK, leastRemoval(BLOCK, 'right', {}))).toThrow(RangeError);
  });
});
