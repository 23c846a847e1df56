import { expect, it } from 'vitest';
import type { Plan } from '../../../../src/core/correction/plan/plan';
import { plansFor } from '../../../../src/core/correction/plan/plans-for';
import { waysOf } from '../../../../src/core/correction/plan/ways';
import { FACES } from '../../../../src/core/part/faces';
import { partWith, requirement } from '../../support/worked-block';
import { simpleZone } from '../../support/zones';
import { NO_SIZES } from './support/problems';

const DEMAND = { level: 0.95, share: 0.5 };

function plansTo(...asked: Parameters<typeof requirement>[]) {
  const requirements = asked.map((one) => requirement(...one));
  return plansFor(
    partWith(requirements),
    requirements.map((one) => ({ requirement: one, zone: simpleZone(3, 0), formPoints: [] })),
    NO_SIZES,
    DEMAND,
  );
}

const faces = (plans: readonly Plan[]) => plans.map((plan) => plan.faces.join());

it('one face is first where it does all, the other that does it next, the rest are stopped', () => {
  const ways = waysOf(plansTo(['right', 'bottom', 2]), 'stock');
  expect(faces([ways.first, ...ways.others])).toEqual(['bottom', 'right']);
  expect(faces(ways.stopped)).toEqual(['left', 'back', 'front', 'top']);
});

it('several faces are first where no single one does it, and every single one is stopped', () => {
  const ways = waysOf(plansTo(['right', 'bottom', 2], ['back', 'top', 2]), 'stock');
  expect(ways.first.possible).toBe(true);
  expect(ways.first.steps.length).toBe(2);
  expect(ways.others).toEqual([]);
  expect(faces(ways.stopped).sort()).toEqual([...FACES].sort());
});

it('a face more is worked first only where that takes clearly less', () => {
  const plans = plansTo(['right', 'bottom', 2]);
  const [bottom] = plans.single;
  const both = (volume: number): Plan => {
    const steps = [...bottom!.steps, ...bottom!.steps];
    return { ...bottom!, faces: ['bottom', 'right'], steps, volume };
  };
  const order = (volume: number) => {
    const { first, others } = waysOf({ ...plans, best: both(volume) }, 'stock');
    return faces([first, ...others]);
  };
  expect(order(bottom!.volume * 0.995)).toEqual(['bottom', 'bottom,right', 'right']);
  expect(order(bottom!.volume * 0.98)).toEqual(['bottom,right', 'bottom', 'right']);
});

it('by time the smallest wedge is first', () => {
  const plans = plansTo(['right', 'bottom', 2]);
  const { first, others } = waysOf(plans, 'time');
  const wedges = [first, ...others].map(({ wedge }) => wedge);
  expect(wedges).toEqual([...wedges].sort((one, other) => one - other));
});
