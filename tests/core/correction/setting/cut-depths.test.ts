import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { atCorners, highSide } from '../../../../src/core/correction/removal';
import { cutDepths } from '../../../../src/core/correction/setting/cut-depths';
import { expectClose } from '../../support/close';
import { removal } from '../../support/removals';
import { BLOCK } from '../../support/worked-block';

describe('the depths of a cut', () => {
  it('are by hand: 8 µm at the left, 2 µm at the right', () => {
    const depths = cutDepths(BLOCK, { face: 'top', mean: 5, slopes: { x: -0.1 } });
    expect(depths).toEqual({ touches: ['left'], full: 8, least: 2, cleansUp: 6 });
  });

  it('are alike all over in a level cut, which touches everywhere', () => {
    const depths = cutDepths(BLOCK, { face: 'back', mean: 7, slopes: {} });
    expect(depths).toEqual({ touches: [], full: 7, least: 7, cleansUp: 0 });
  });

  it('are the most and the least that any corner loses', () => {
    fc.assert(
      fc.property(removal, fc.double({ min: 0, max: 20, noNaN: true }), (least, more) => {
        const one = { ...least, mean: least.mean + more };
        const removals = atCorners(BLOCK, one).map((corner) => corner.removal);
        const depths = cutDepths(BLOCK, one);
        expectClose(depths.full, Math.max(...removals), { absolute: 1e-9 });
        expectClose(depths.least, Math.min(...removals), { absolute: 1e-9 });
        expectClose(depths.cleansUp, depths.full - depths.least, { absolute: 1e-9 });
        expect(depths.least).toBeGreaterThanOrEqual(0);
        expect(depths.touches).toEqual(highSide(one));
      }),
    );
  });

  it('are refused where nothing comes off, or something would be put on', () => {
    expect(() => cutDepths(BLOCK, { face: 'top', mean: 0, slopes: {} })).toThrow(RangeError);
    expect(() => cutDepths(BLOCK, { face: 'top', mean: Number.NaN, slopes: {} })).toThrow(
      RangeError,
    );
    expect(() => cutDepths(BLOCK, { face: 'top', mean: 1, slopes: { x: 0.1 } })).toThrow(
      RangeError,
    );
  });
});
