import { expect, it } from 'vitest';
import { effectOf } from '../../../src/core/correction/effects';
import { expectClose } from '../support/close';
import { BLOCK, requirement } from '../support/worked-block';
import { doubleZone, simpleZone } from '../support/zones';

const nothing = { face: 'bottom', mean: 0, slopes: {} } as const;

it('leaves the widths as they are where nothing comes off, both parts of a taper counted', () => {
  const zone = doubleZone([3, -4], [0.5, 0.5]);
  const effect = effectOf(nothing, requirement('top', 'bottom'), zone, BLOCK, 0.95);
  expectClose(effect.after.width, 7);
  expectClose(effect.withForm.before, 7);
  expectClose(effect.withForm.after, 7);
});

it('takes what form adds off the tolerance that the verdict goes by', () => {
  // A bump of 6 µm in the middle of a side that leans by 2: from -1 to 6, which is 7 wide.
  const form = [{ shares: [0], residual: 6, group: 'side', standard: 0.1 }];
  const zone = simpleZone(2, 0.5);
  const judge = (tolerance: number) =>
    effectOf(nothing, requirement('right', 'bottom', tolerance), zone, BLOCK, 0.95, form);
  expectClose(judge(10).withForm.after, 7);
  // 2 ± 0.5 is judged against 5 and 3 more than it, and less.
  expect(judge(10).verdict).toEqual(
    effectOf(nothing, requirement('right', 'bottom', 5), zone, BLOCK, 0.95).verdict,
  );
  expect(judge(10).verdict).toBe('in');
  expect(judge(6).verdict).toBe('out');
});
