import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { lonePlace } from '../../../src/core/inspection/lone-place';
import { minimumZonePlane } from '../../../src/core/zones/form/flatness';
import type { FacePoint } from '../../../src/core/zones/form/points';
import { expectClose } from '../support/close';

/** Nine places in rows from the front, 20 by 15 mm apart. */
function grid(values: readonly number[]): readonly FacePoint[] {
  return values.map((deviation, index) => ({
    u: 20 * (index % 3),
    v: 15 * Math.floor(index / 3),
    deviation,
  }));
}

function loneIn(points: readonly FacePoint[], standard = 0.5) {
  return lonePlace(points, minimumZonePlane(points), standard);
}

const PLANE = [0, 5, 10, 2, 7, 12, 4, 9, 14];

describe('a place that stands off by itself', () => {
  it('is found wherever it is, up or down, on whatever plane', () => {
    const slopes = fc.integer({ min: -20, max: 20 });
    const size = fc.constantFrom(-30, -9, 9, 30);
    fc.assert(
      fc.property(fc.nat(8), size, slopes, slopes, (place, off, along, across) => {
        const values = PLANE.map(
          (value, index) =>
            value +
            along * (index % 3) +
            across * Math.floor(index / 3) +
            (index === place ? off : 0),
        );
        const lone = loneIn(grid(values));
        expect(lone?.index).toBe(place);
        expectClose(lone?.without, 0, { absolute: 1e-9 });
        expectClose(lone?.off, off, { absolute: 1e-9 });
      }),
    );
  });

  it('is told with how flat the others are', () => {
    // Without the middle, which is 9 up, the corners of one side are 1 up: no zone is less than 1/2 wide.
    const lone = loneIn(grid([0, 0, 1, 0, 9, 0, 0, 0, 0]));
    expect(lone?.index).toBe(4);
    expect(lone?.without).toBeGreaterThan(0);
    expect(lone?.without).toBeLessThanOrEqual(1);
  });

  it('is none where another would do as well, or the others are no flatter', () => {
    // A twist: two opposite corners are up.
    expect(loneIn(grid([0, 0, 12, 0, 0, 0, 12, 0, 0]))).toBeUndefined();
    // A bowl, which has no place of its own.
    expect(loneIn(grid([20, 10, 20, 10, 0, 10, 20, 10, 20]))).toBeUndefined();
    expect(loneIn(grid([0, 0, 9, 0, 0, 0, 9, 0, 9]))).toBeUndefined();
    expect(loneIn(grid(PLANE))).toBeUndefined();
  });

  it('is none within what noise makes', () => {
    const bump = grid([0, 0, 0, 0, 3, 0, 0, 0, 0]);
    expect(loneIn(bump, 3 / 3.28)).toBeUndefined();
    expect(loneIn(bump, 3 / 3.3)?.index).toBe(4);
  });

  it('is none of five places: any three of the others lie in a plane', () => {
    const five = grid([0, 0, 0, 0, 9]);
    expect(loneIn(five)).toBeUndefined();
    expect(loneIn(grid([0, 0, 0, 0, 9, 0]))?.index).toBe(4);
  });

  it('is none without which the others lie on a line', () => {
    const onLine = [0, 10, 20, 30, 40].map((u) => ({ u, v: 0, deviation: 0 }));
    expect(loneIn([...onLine, { u: 20, v: 15, deviation: 9 }])).toBeUndefined();
  });
});
