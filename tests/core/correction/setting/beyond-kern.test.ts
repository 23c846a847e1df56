import { describe, expect, it } from 'vitest';
import { pressedBeyond } from '../../../../src/core/correction/setting/beyond-kern';
import { expectClose } from '../../support/close';
import { BLOCK } from '../../support/worked-block';

describe('pressing further out than the edge of the kern', () => {
  // The bottom is 60 mm from left to right: its kern reaches 10 mm from the middle.
  const point = { x: -10, y: 0 };

  it('lifts the far edge: 3·(L/2 - e) of the length stays down (rule of eccentric footings)', () => {
    // A quarter of the 20 mm that are left to the edge: e = 15, 3·(30 - 15) = 45 of 60 mm.
    const { further, contact } = pressedBeyond(BLOCK, 'bottom', point, 0.25);
    expectClose(further, 5);
    expectClose(contact.share, 0.75);
  });

  it('at the point itself keeps all of it down', () => {
    const { further, contact } = pressedBeyond(BLOCK, 'bottom', point, 0);
    expect(further).toBe(0);
    expectClose(contact.share, 1);
  });

  it.each([-0.1, 1, Number.NaN])('by a share of %d is refused', (share) => {
    expect(() => pressedBeyond(BLOCK, 'bottom', point, share)).toThrow(RangeError);
  });
});
