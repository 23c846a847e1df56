import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { leastRemoval } from '../../../../src/core/correction/removal';
import { kernShare, kernShareOf } from '../../../../src/core/correction/setting/kern';
import { ECCENTRIC_LOADS } from '../../reference/eccentric-load';
import { expectClose } from '../../support/close';
import { removal } from '../../support/removals';
import { BLOCK } from '../../support/worked-block';

describe('the share of the kern', () => {
  it.each(ECCENTRIC_LOADS)('is 1 less what is left of the pressure, $e off the middle', (load) => {
    const { P, B, L, e, low } = load;
    const block = { size: { x: B, y: L, z: 1 } };
    expectClose(kernShare(block, 'top', { x: e }), 1 - low / (P / (B * L)));
  });

  it('adds along both axes, to whatever side', () => {
    // 60 × 40: a sixth of each is 10 and 6.67 mm.
    expectClose(kernShare(BLOCK, 'top', { x: -5, y: 2 }), 0.5 + 0.3);
    expect(kernShare(BLOCK, 'top', {})).toBe(0);
  });

  it('is all of it for a wedge that feathers out, half for twice the mean', () => {
    fc.assert(
      fc.property(removal, (least) => {
        expectClose(kernShareOf(BLOCK, least), 1);
        expectClose(kernShareOf(BLOCK, { ...least, mean: 2 * least.mean }), 0.5);
        expectClose(kernShareOf(BLOCK, { ...least, mean: least.mean / 2 }), 2);
      }),
    );
  });

  it('is none for a level cut, and not there where nothing comes off', () => {
    expect(kernShareOf(BLOCK, { face: 'top', mean: 5, slopes: {} })).toBe(0);
    expect(() => kernShareOf(BLOCK, leastRemoval(BLOCK, 'top', {}))).toThrow(RangeError);
  });
});
