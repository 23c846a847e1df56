import { describe, expect, it } from 'vitest';
import { plansFor } from '../../../../src/core/correction/plan/plans-for';
import { areNeighbours, FACES, type Face } from '../../../../src/core/part/faces';
import { planOn } from '../../support/advised';
import { expectClose } from '../../support/close';
import { NORMALS } from '../../support/exact-block';
import { BLOCK, partWith, requirement } from '../../support/worked-block';
import { simpleZone } from '../../support/zones';
import { NO_SIZES } from './support/problems';

/** µm over the face: + leans outward going away from the datum. */
function plansToNothing(face: Face, datum: Face, lean: number) {
  const one = requirement(face, datum, 1e-12);
  const measured = [{ requirement: one, zone: simpleZone(lean, 0), formPoints: [] }];
  return plansFor(partWith([one]), measured, NO_SIZES, { level: 0.95, share: 1 });
}

function highSides(face: Face, datum: Face, worked: Face, lean: number) {
  return planOn(plansToNothing(face, datum, lean), worked).steps.map(({ highSide }) => highSide);
}

describe('the sense of a correction', () => {
  it.each([
    // Face, datum, worked face, lean outward, high edge.
    ['right', 'bottom', 'bottom', 10, 'left'],
    ['right', 'bottom', 'right', 10, 'top'],
    ['right', 'bottom', 'bottom', -10, 'right'],
    ['right', 'bottom', 'right', -10, 'bottom'],
    ['front', 'top', 'top', 10, 'back'],
    ['front', 'top', 'front', 10, 'bottom'],
    ['top', 'left', 'left', 10, 'bottom'],
    ['top', 'left', 'top', 10, 'right'],
  ] as const)(
    'of %s to %s on the %s, leaning %d µm: high %s',
    (...[face, datum, worked, lean, high]) => {
      expect(highSides(face, datum, worked, lean)).toEqual([[high]]);
    },
  );

  it('is the same on every edge: what leans out is high at the end away from the other face', () => {
    const pairs = FACES.flatMap((face) =>
      FACES.filter((datum) => areNeighbours(face, datum)).map((datum) => [face, datum] as const),
    );
    expect(pairs).toHaveLength(24);
    const opposite = (face: Face) => {
      return FACES.find((one) => NORMALS[one].every((part, k) => part === 0 - NORMALS[face][k]!))!;
    };
    for (const [face, datum] of pairs) {
      expect(highSides(face, datum, face, 10)).toEqual([[opposite(datum)]]);
      expect(highSides(face, datum, datum, 10)).toEqual([[opposite(face)]]);
      expect(highSides(face, datum, face, -10)).toEqual([[datum]]);
      expect(highSides(face, datum, datum, -10)).toEqual([[face]]);
    }
  });

  it('takes what the lean is over the length of the face worked', () => {
    const plans = plansToNothing('front', 'top', 10);
    expectClose(planOn(plans, 'front').wedge, 10);
    expectClose(planOn(plans, 'top').wedge, (10 * BLOCK.size.y) / BLOCK.size.z);
  });

  it.each([0, 1e-15, -1e-9])('has no meaning for an error of %d µm: nothing comes off', (lean) => {
    const { best, single } = plansToNothing('right', 'bottom', lean);
    for (const { possible, steps } of [best, ...single])
      expect([possible, steps]).toEqual([true, []]);
  });
});
