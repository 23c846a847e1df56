import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  bowByWarmth,
  type Gradient,
  leanByWarmth,
  leanUncertainty,
  taperByWarmth,
} from '../../../src/core/statistics/temperature-gradient';
import { expectClose } from '../support/close';

const gradient: fc.Arbitrary<Gradient> = fc.record({
  coefficient: fc.double({ min: 4, max: 25, noNaN: true }),
  difference: fc.double({ min: 0.05, max: 5, noNaN: true }),
  along: fc.double({ min: 10, max: 500, noNaN: true }),
  across: fc.double({ min: 10, max: 500, noNaN: true }),
});

const ALUMINIUM = { coefficient: 23.6, difference: 0.5, along: 100, across: 100 };

/**
 * The block bent in earnest: a sector between two arcs, the cool one as long as it was and the
 * warm one grown, as far apart as they were. Corners in mm; x away from the arcs' centre.
 */
function sectorOf({ coefficient, difference, along, across }: Gradient) {
  const grown = coefficient * 1e-6 * difference;
  const turn = (grown * across) / along;
  const radius = across / turn;
  const corner = (distance: number, side: 1 | -1) => ({
    x: distance * Math.cos(turn / 2),
    z: side * distance * Math.sin(turn / 2),
  });
  return { cool: radius, warm: radius + along, turn, corner };
}

describe('a block that is warmer on one side', () => {
  it('tapers by the growth of the warm side over its length', () => {
    // By hand: 100 mm of aluminium, 0.5 K warmer, grows by 1.18 µm.
    expectClose(taperByWarmth(ALUMINIUM), 0.0118);
    expectClose(leanByWarmth(ALUMINIUM), 0.0059);
    expectClose(leanUncertainty(ALUMINIUM), 0.0059 / Math.sqrt(3));
    expectClose(bowByWarmth(ALUMINIUM), 0.1475);
  });

  it('has its corners where the exact arcs have them', () => {
    fc.assert(
      fc.property(gradient, (one) => {
        const { cool, warm, turn, corner } = sectorOf(one);
        const near = { relative: 1e-3 };
        // Thickness along the bottom's normal, cool side to warm side, µm/mm.
        const thickness = (distance: number) => 2 * corner(distance, 1).z;
        const taper = (1000 * (thickness(warm) - thickness(cool))) / one.along;
        expectClose(taper, taperByWarmth(one), near);
        // The chord of each arc is upright; the bottom turns by half the sector's angle.
        const bottom = Math.atan2(
          corner(warm, -1).z - corner(cool, -1).z,
          corner(warm, -1).x - corner(cool, -1).x,
        );
        expectClose(bottom, -turn / 2, { relative: 1e-6 });
        // Interior angles less 90°: bottom to the upright chords.
        const atCool = -bottom * 1000;
        const atWarm = bottom * 1000;
        expectClose(atCool, leanByWarmth(one), near);
        expectClose(atWarm, -leanByWarmth(one), near);
        // r·(1 - cos θ) written so that no digits are lost.
        const bow = 1000 * cool * 2 * Math.sin(turn / 4) ** 2;
        expectClose(bow, bowByWarmth(one), near);
      }),
    );
  });

  it('is strained by its warmth alone, with no shear', () => {
    // The displacements of the derivation, differentiated by central differences.
    const k = 3e-6;
    const u = (x: number, z: number) => [(k * (x * x - z * z)) / 2, k * x * z] as const;
    const step = 0.5;
    for (const [x, z] of [
      [0, 0],
      [30, -20],
      [-50, 50],
    ] as const) {
      const [right, left] = [u(x + step, z), u(x - step, z)];
      const [up, down] = [u(x, z + step), u(x, z - step)];
      const along = (one: number, other: number) => (one - other) / (2 * step);
      expectClose(along(right[0], left[0]), k * x, { absolute: 1e-15 });
      expectClose(along(up[1], down[1]), k * x, { absolute: 1e-15 });
      expectClose(along(up[0], down[0]) + along(right[1], left[1]), 0, { absolute: 1e-15 });
    }
  });

  it('has the opposite lean when the warmth is turned round, and none without it', () => {
    fc.assert(
      fc.property(gradient, (one) => {
        const turned = { ...one, difference: -one.difference };
        expect(leanByWarmth(turned)).toBe(-leanByWarmth(one));
        expect(leanUncertainty(turned)).toBe(leanUncertainty(one));
        expect(leanByWarmth({ ...one, difference: 0 })).toBe(0);
      }),
    );
  });

  it('warm at the top grows wider by its growth: each side leans by half of that over the height', () => {
    fc.assert(
      fc.property(gradient, (one) => {
        const wider = one.coefficient * 1e-3 * one.difference * one.across;
        expectClose(leanByWarmth(one), wider / 2 / one.along, { relative: 1e-12 });
      }),
    );
  });
});

describe('what makes no sense is refused', () => {
  it.each([0, -1, Number.NaN, Number.POSITIVE_INFINITY])('a size of %d mm', (bad) => {
    expect(() => leanByWarmth({ ...ALUMINIUM, along: bad })).toThrow(RangeError);
    expect(() => bowByWarmth({ ...ALUMINIUM, across: bad })).toThrow(RangeError);
  });

  it.each([Number.NaN, Number.POSITIVE_INFINITY])('a difference of %d K', (difference) => {
    expect(() => taperByWarmth({ ...ALUMINIUM, difference })).toThrow(RangeError);
    expect(() => leanUncertainty({ ...ALUMINIUM, difference })).toThrow(RangeError);
  });
});
