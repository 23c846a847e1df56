import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { AXES } from '../../../src/core/part/faces';
import {
  drawnSizes,
  exaggerationOf,
  largestError,
  roundFactor,
} from '../../../src/widgets/drawings/turning-block/exaggeration';
import { anyBlock, anySize, obtuseBlock, SIZES } from './blocks';

describe('the round factor', () => {
  it.each([
    [1, 1],
    [1.41, 1],
    [1.42, 2],
    [3.16, 2],
    [3.17, 5],
    [7.07, 5],
    [7.08, 10],
    [800, 1000],
    [5333, 5000],
    [0.5, 0.5],
    [0.03, 0.02],
    [100_000, 100_000],
  ])('of %d is %d', (exact, round) => {
    expect(roundFactor(exact)).toBe(round);
  });

  it('is 1, 2 or 5 × 10ⁿ, never further off than half a step', () => {
    fc.assert(
      fc.property(fc.double({ min: 1e-3, max: 1e5, noNaN: true }), (exact) => {
        const factor = roundFactor(exact);
        expect(factor.toExponential()).toMatch(/^[125]e/);
        // The widest step is from 2 to 5.
        expect(Math.abs(Math.log(factor / exact))).toBeLessThanOrEqual(Math.log(2.5) / 2 + 1e-9);
      }),
      { seed: 4 },
    );
  });
});

describe('the exaggeration', () => {
  it('by hand: 0.02 µm/mm over 90 mm is 1.8 µm, of which the wedge of 1.2 µm is less', () => {
    // The lean stands out 0.9 µm at the top; the wedge is 0.02 × 60 = 1.2 µm; 12 % of 40 mm is 4.8 mm.
    expect(largestError(obtuseBlock())).toBeCloseTo(1.2, 12);
    expect(exaggerationOf(obtuseBlock())).toBe(roundFactor(4800 / 1.2));
    expect(exaggerationOf(obtuseBlock())).toBe(5000);
  });

  it('brings the largest error to about 12 % of the smallest drawn size', () => {
    fc.assert(
      fc.property(anyBlock, (block) => {
        const factor = exaggerationOf(block)!;
        const sizes = drawnSizes(block.size);
        const smallest = Math.min(...AXES.map((axis) => sizes[axis]));
        const share = (largestError(block) / 1000) * (factor / smallest);
        fc.pre(factor < 100_000);
        expect(share).toBeGreaterThan(0.12 / Math.sqrt(2.5) - 1e-9);
        expect(share).toBeLessThan(0.12 * Math.sqrt(2.5) + 1e-9);
      }),
      { seed: 5 },
    );
  });

  it('is none where there is nothing to draw', () => {
    expect(exaggerationOf({ size: SIZES.block })).toBeUndefined();
    expect(exaggerationOf({ size: SIZES.block, slopes: { right: { z: 0 } } })).toBeUndefined();
  });

  it('does not draw what no comparator sees', () => {
    expect(exaggerationOf({ size: SIZES.block, slopes: { right: { z: 1e-9 } } })).toBe(100_000);
  });

  it('takes what is no number for nothing', () => {
    expect(exaggerationOf({ size: SIZES.block, slopes: { right: { z: Number.NaN } } })).toBe(
      undefined,
    );
  });
});

describe('the drawn sizes', () => {
  it('are the true ones where the block is not too thin', () => {
    expect(drawnSizes(SIZES.block)).toEqual(SIZES.block);
  });

  it('keep the longest side and the order of the others, and none is too thin to draw on', () => {
    fc.assert(
      fc.property(anySize, (size) => {
        const drawn = drawnSizes(size);
        const longest = Math.max(...AXES.map((axis) => size[axis]));
        for (const axis of AXES) {
          expect(drawn[axis]).toBeGreaterThanOrEqual(0.36 * longest - 1e-9);
          expect(drawn[axis]).toBeLessThanOrEqual(longest + 1e-9);
          for (const other of AXES) {
            if (size[axis] < size[other]) expect(drawn[axis]).toBeLessThanOrEqual(drawn[other]);
          }
          if (size[axis] === longest) expect(drawn[axis]).toBeCloseTo(longest, 9);
        }
      }),
      { seed: 6 },
    );
  });
});
