import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { atCorners, highSide, wedgeOf } from '../../../../src/core/correction/removal';
import { presentRises } from '../../../../src/core/correction/setting/present-rise';
import { expectClose } from '../../support/close';
import { removal } from '../../support/removals';
import { BLOCK } from '../../support/worked-block';

describe('how a face must indicate before the cut', () => {
  it('is by hand: high at the left by 6 µm over 60 mm, level from front to back', () => {
    const one = { face: 'top', mean: 3, slopes: { x: -0.1 } } as const;
    expect(presentRises(BLOCK, one)).toEqual([{ axis: 'x', high: 'left', rise: 6 }]);
  });

  it('is by hand along both axes, a level slope left out', () => {
    const rises = presentRises(BLOCK, { face: 'right', mean: 9, slopes: { y: 0.05, z: -0.1 } });
    expect(rises).toEqual([
      { axis: 'y', high: 'back', rise: 2 },
      { axis: 'z', high: 'bottom', rise: 9 },
    ]);
    const level = presentRises(BLOCK, { face: 'right', mean: 9, slopes: { y: 0, z: -0.1 } });
    expect(level.map(({ high }) => high)).toEqual(['bottom']);
  });

  it('is level where a level cut is asked for', () => {
    expect(presentRises(BLOCK, { face: 'front', mean: 5, slopes: {} })).toEqual([]);
  });

  it('is high where most comes off, and all rises together are the wedge of a feathered cut', () => {
    fc.assert(
      fc.property(removal, fc.double({ min: 0, max: 20, noNaN: true }), (least, more) => {
        const rises = presentRises(BLOCK, least);
        expect(rises.map(({ high }) => high)).toEqual(highSide(least));
        const total = rises.reduce((sum, { rise }) => sum + rise, 0);
        expectClose(total, wedgeOf(BLOCK, least), { absolute: 1e-9 });
        // How deep the cut goes does not matter.
        expect(presentRises(BLOCK, { ...least, mean: least.mean + more })).toEqual(rises);
        for (const { towards, removal: off } of atCorners(BLOCK, least)) {
          const height = rises
            .filter(({ high }) => towards.includes(high))
            .reduce((sum, { rise }) => sum + rise, 0);
          expectClose(off, height, { absolute: 1e-9 });
        }
      }),
    );
  });
});
