import { describe, expect, it } from 'vitest';
import type { Plan } from '../../../../src/core/correction/plan/plan';
import { plansFor } from '../../../../src/core/correction/plan/plans-for';
import { planOn } from '../../support/advised';
import { expectClose } from '../../support/close';
import { known } from '../../support/known';
import { partWith, requirement } from '../../support/worked-block';
import { doubleZone } from '../../support/zones';
import { NO_SIZES } from './support/problems';

/*
 * Right to left over a block 60 × 40 × 90: from front to back the block is thicker by p µm, from
 * bottom to top by q, and |p| + |q| is to come to no more than is allowed. Of what comes off the
 * right or the left the sum of both ways counts, and so does the stock, 40·90 mm² times half of it:
 * where either taper would do, the one over 90 mm turns the face less.
 */

/** Plans to bring tapers that are known for certain to `allowed` of the 10 µm of the drawing. */
function plansTo(allowed: number, p: number, q: number) {
  const one = requirement('right', 'left', 10);
  const measured = [{ requirement: one, zone: doubleZone([p, q], [0, 0]), formPoints: [] }];
  return plansFor(partWith([one]), measured, NO_SIZES, { level: 0.95, share: allowed / 10 });
}

/** µm: nothing but for rounding. */
const NOTHING = 1e-12;

/** µm off each corner of the one face worked, by the neighbours that meet there. */
function removals({ steps }: Plan): Readonly<Record<string, number>> {
  expect(steps).toHaveLength(1);
  const corners = known(steps[0]).corners;
  return Object.fromEntries(corners.map(({ towards, removal }) => [towards.join(' '), removal]));
}

/** The high edge or corner of a plan on the right face. */
function highSides(allowed: number, p: number, q: number) {
  return planOn(plansTo(allowed, p, q), 'right').steps.map(({ highSide }) => highSide);
}

describe.each(['right', 'left'] as const)(
  '4 µm going back and 4.5 µm going up, off the %s',
  (face) => {
    it('to nothing: both, the upper back corner being high', () => {
      const plan = planOn(plansTo(NOTHING, 4, 4.5), face);
      const off = removals(plan);
      expect(plan.possible).toBe(true);
      expect(plan.steps[0]?.highSide).toEqual(['back', 'top']);
      expectClose(plan.steps[0]?.wedge, 8.5);
      expectClose(plan.volume, (4.25 * 40 * 90) / 1000);
      expectClose(off['back top'], 8.5);
      expectClose(off['back bottom'], 4);
      expectClose(off['front top'], 4.5);
      expectClose(off['front bottom'], 0);
      expectClose(plan.effects[0]?.after.width, 0, { absolute: 2 * NOTHING });
      expect(plan.effects[0]?.verdict).toBe('in');
    });

    it('to 5 µm: 3.5 of the taper over 90 mm', () => {
      const plan = planOn(plansTo(5, 4, 4.5), face);
      const off = removals(plan);
      expect(plan.steps[0]?.highSide).toEqual(['top']);
      expectClose(off['back top'], 3.5);
      expectClose(off['front top'], 3.5);
      expectClose(off['back bottom'], 0);
      expectClose(plan.volume, (1.75 * 40 * 90) / 1000);
      expectClose(plan.effects[0]?.after.width, 5);
      expectClose(plan.effects[0]?.after.parts[0]?.value, 4);
    });

    it('to 2 µm: all of that, none of it turned round, and 2 of the taper over 40 mm', () => {
      const plan = planOn(plansTo(2, 4, 4.5), face);
      const off = removals(plan);
      expect(plan.steps[0]?.highSide).toEqual(['back', 'top']);
      expectClose(off['back top'], 6.5);
      expectClose(off['back bottom'], 2);
      expectClose(off['front top'], 4.5);
      expectClose(plan.effects[0]?.after.parts[0]?.value, 2);
      expectClose(plan.effects[0]?.after.parts[1]?.value, 0);
    });
  },
);

describe('the high corner', () => {
  it.each([
    [4, 4.5, ['back', 'top']],
    [4, -4.5, ['back', 'bottom']],
    [-4, 4.5, ['front', 'top']],
    [-4, -4.5, ['front', 'bottom']],
  ])('of tapers of %d and %d µm is %j', (p, q, corner) => {
    expect(highSides(NOTHING, p, q)).toEqual([corner]);
  });

  it.each([
    [1e-9, 4.5, ['top']],
    [4, -1e-9, ['back']],
  ])('is an edge where rounding is all there is of one taper: %d and %d µm', (p, q, edge) => {
    expect(highSides(NOTHING, p, q)).toEqual([edge]);
  });

  it.each([0, 1e-15, 1e-9])('is none where all there is is %d µm', (rounding) => {
    expect(highSides(NOTHING, rounding, -rounding)).toEqual([]);
  });
});
