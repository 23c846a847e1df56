import { describe, expect, it } from 'vitest';
import { byTime, secondsOf } from '../../../../src/core/correction/plan/order';
import { plansFor } from '../../../../src/core/correction/plan/plans-for';
import { partWith, requirement } from '../../support/worked-block';
import { simpleZone } from '../../support/zones';
import { NO_SIZES } from './support/problems';

const ONE = requirement('right', 'bottom', 2);
const { best, single } = plansFor(
  partWith([ONE]),
  [{ requirement: ONE, zone: simpleZone(3, 0), formPoints: [] }],
  NO_SIZES,
  { level: 0.95, share: 0.5 },
);
const STOPPED = ['left', 'back', 'front', 'top'];

function facesOf(plans: typeof single) {
  return plans.map(({ faces }) => faces[0]);
}

describe('the order of plans', () => {
  it('by stock is that of volume: bottom before right', () => {
    expect(facesOf(single)).toEqual(['bottom', 'right', ...STOPPED]);
  });

  it('by time is that of the seconds of all steps', () => {
    const quickOnRight = byTime(single, ({ face }) => (face === 'right' ? 10 : 60));
    expect(facesOf(quickOnRight)).toEqual(['right', 'bottom', ...STOPPED]);
    const byWedge = byTime(single, ({ wedge }) => wedge / 0.1);
    expect(facesOf(byWedge)).toEqual(['bottom', 'right', ...STOPPED]);
  });

  it('puts a plan whose time is not known after those whose is', () => {
    const onlyRight = byTime(single, ({ face }) => (face === 'right' ? 600 : undefined));
    expect(facesOf(onlyRight)).toEqual(['right', 'bottom', ...STOPPED]);
    const none = byTime(single, () => undefined);
    expect(facesOf(none)).toEqual(['bottom', 'right', ...STOPPED]);
  });

  it('leaves stopped plans last, whatever they take', () => {
    const slow = byTime(single, () => 1e9);
    expect(facesOf(slow)).toEqual(['bottom', 'right', ...STOPPED]);
  });
});

describe('the time of a plan', () => {
  it('is the sum over its steps, and not known where one is not', () => {
    const [step] = best.steps;
    const twice = { ...best, steps: [step!, { ...step!, face: 'right' as const }] };
    expect(secondsOf(twice, ({ face }) => (face === 'right' ? 30 : 12))).toBe(42);
    const half = secondsOf(twice, ({ face }) => (face === 'right' ? undefined : 12));
    expect(half).toBeUndefined();
  });

  it('is nothing where there is nothing to do', () => {
    expect(secondsOf({ ...best, steps: [] }, () => undefined)).toBe(0);
  });
});
