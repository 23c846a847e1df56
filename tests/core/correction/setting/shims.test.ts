import { describe, expect, it } from 'vitest';
import type { Removal } from '../../../../src/core/correction/removal';
import { shimsFor } from '../../../../src/core/correction/setting/shims';
import { expectClose } from '../../support/close';
import { known } from '../../support/known';
import { BLOCK } from '../../support/worked-block';

/** 6 µm off the left edge of the top, 60 mm long, and nothing off the right. */
const LEFT: Removal = { face: 'top', mean: 3, slopes: { x: -0.1 } };
const PARALLEL = { x: 0, y: 0 };

describe('the shims of the worked example', () => {
  it('are 6 µm under the left edge of the bottom', () => {
    const shims = known(shimsFor(BLOCK, LEFT, PARALLEL));
    expect(shims.on).toBe('bottom');
    expect(shims.edges).toEqual([{ under: 'left', thickness: 6, span: 60 }]);
    for (const { towards, thickness } of shims.corners) {
      expect(thickness).toBe(towards.includes('left') ? 6 : 0);
    }
  });

  it('are 5 µm where they bear 50 mm from the right edge', () => {
    const shims = known(shimsFor(BLOCK, LEFT, PARALLEL, { x: 50 }));
    expect(shims.edges).toEqual([{ under: 'left', thickness: 5, span: 50 }]);
  });

  it.each([0, 0.3, -0.3])('are none where the block is already thinner at the right', (lean) => {
    // Put together with rounding: 0.3 - 0.4 is not -0.1.
    const taper = lean + (-0.1 - lean);
    const shims = known(shimsFor(BLOCK, LEFT, { x: taper, y: 0 }));
    expect(shims.edges).toEqual([]);
    expect(shims.corners.map(({ thickness }) => thickness)).toEqual([0, 0, 0, 0]);
  });

  it('go under the right edge where the block is thinner there by more', () => {
    const shims = known(shimsFor(BLOCK, LEFT, { x: -0.15, y: 0 }));
    expect(shims.edges[0]?.under).toBe('right');
    expectClose(shims.edges[0]?.thickness, 3);
  });
});

describe('shims', () => {
  it('under two edges add up where these meet', () => {
    // Afterwards 4 µm thinner at the left over 60 mm, and 8 µm thinner at the back over 40 mm.
    const removal: Removal = { face: 'bottom', mean: 6, slopes: { x: -4 / 60, y: 8 / 40 } };
    const shims = known(shimsFor(BLOCK, removal, PARALLEL));
    expect(shims.on).toBe('top');
    expect(shims.edges.map(({ under }) => under)).toEqual(['left', 'back']);
    expectClose(shims.edges[0]?.thickness, 4);
    expectClose(shims.edges[1]?.thickness, 8);
    const at = (...sides: readonly string[]) =>
      shims.corners.find(({ towards }) => sides.every((side) => towards.some((o) => o === side)))
        ?.thickness;
    expectClose(at('left', 'back'), 12);
    expectClose(at('left', 'front'), 4);
    expectClose(at('right', 'back'), 8);
    expect(at('right', 'front')).toBe(0);
  });

  it('are none where the cut is to leave the block parallel', () => {
    const removal: Removal = { face: 'left', mean: 5, slopes: { y: 0.02, z: -0.03 } };
    expect(shimsFor(BLOCK, removal, { y: 0.02, z: -0.03 })?.edges).toEqual([]);
  });

  it('keep the taper there is where a level cut is asked for', () => {
    // Thicker to the back by 0.02 µm/mm: lifted at the front, so that as much comes off all over.
    const shims = known(shimsFor(BLOCK, { face: 'right', mean: 5, slopes: {} }, { y: 0.02, z: 0 }));
    expect(shims.edges[0]?.under).toBe('front');
    expectClose(shims.edges[0]?.thickness, 0.8);
  });

  it('do not depend on how deep the cut is', () => {
    expect(shimsFor(BLOCK, { ...LEFT, mean: 50 }, PARALLEL)).toEqual(
      shimsFor(BLOCK, LEFT, PARALLEL),
    );
  });

  it('cannot be told where a taper is not fixed by the readings', () => {
    expect(shimsFor(BLOCK, LEFT, {})).toBeUndefined();
    expect(shimsFor(BLOCK, LEFT, { x: 0 })).toBeUndefined();
    expect(shimsFor(BLOCK, LEFT, { y: 0, z: 0 })).toBeUndefined();
  });

  it.each([0, -1, 60.1, Number.NaN])('are refused %d mm from the other edge', (span) => {
    expect(() => shimsFor(BLOCK, LEFT, PARALLEL, { x: span })).toThrow(RangeError);
  });
});
