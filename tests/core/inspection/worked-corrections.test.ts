import { describe, expect, it } from 'vitest';
import type { Plan, PlanStep } from '../../../src/core/correction/plan/plan';
import { studentQuantile } from '../../../src/core/statistics/student';
import { adviceOn, planOn } from '../support/advised';
import { expectClose } from '../support/close';
import { known } from '../support/known';
import { micrometer, nose } from '../support/readings';
import { partWith, requirement } from '../support/worked-block';

/*
 * The block 60 × 40 × 90 of the worked cases, right 34 and left 31 µm over a lever of 74 mm, the
 * sides measured to be parallel, top and bottom too: right is obtuse to the bottom by
 * e = 3/148 µm/mm, left acute by as much.
 *
 * Work the bottom: it has to be turned by e about the y axis. Right leans out at the top, so the
 * block is to lean to the left: the LEFT edge of the bottom comes off by e·60, the right edge not
 * at all. Work the right face: its TOP edge comes off by e·90.
 */

const e = 3 / 148;

/** So wide that nothing is asked of what is within it. */
const WIDE = 1000;

const flat = (face: 'right' | 'top', places: readonly { x?: number; y?: number; z?: number }[]) =>
  places.map((place) => micrometer(face, place, 0));
const READINGS = [
  nose('right', 34),
  nose('left', 31),
  ...flat('right', [{ y: -15, z: -40 }, { y: 15, z: -40 }, { z: 40 }]),
  ...flat('top', [{ x: -25, y: -15 }, { x: -25, y: 15 }, { x: 25 }]),
];

/** The plans where right is to be square to the bottom within `tolerance` µm, of which half may be used. */
function plansWithin(tolerance: number) {
  const requirements = [
    requirement('right', 'bottom', tolerance),
    requirement('left', 'bottom', WIDE),
    requirement('right', 'left', WIDE),
    requirement('top', 'bottom', WIDE),
  ];
  return adviceOn(partWith(requirements), READINGS).plans;
}

/** The doubt of 95 % is 1.04 µm: of 1 µm it leaves nothing, and the plan can only aim at no error at all. */
const TIGHT = plansWithin(1);

function stepOf(plan: Plan): PlanStep {
  expect(plan.possible).toBe(true);
  expect(plan.steps).toHaveLength(1);
  return known(plan.steps[0]);
}

function effectOn(plan: Plan, id: string) {
  return known(plan.effects.find((one) => one.requirement.id === id));
}

/** Zone of a requirement before and after, µm. */
function zones(plan: Plan, id: string): readonly [number, number] {
  const { before, after } = effectOn(plan, id);
  return [before.width, after.width];
}

describe('working the bottom, the doubt leaving nothing of the tolerance', () => {
  const plan = planOn(TIGHT, 'bottom');
  const step = stepOf(plan);

  it('takes e·60 = 1.216 µm off the left edge and nothing off the right', () => {
    expect(effectOn(plan, 'right to bottom').doubtAlone).toBe(true);
    expect(step.highSide).toEqual(['left']);
    expectClose(step.wedge, e * 60, { relative: 1e-9 });
    expect(step.wedge.toFixed(3)).toBe('1.216');
    for (const { towards, removal } of step.corners) {
      expectClose(removal, towards.includes('left') ? e * 60 : 0, { absolute: 1e-12 });
    }
  });

  it('presses a third of the length in from the left edge: 10 mm from the middle', () => {
    expectClose(step.pressPoint.x, -10, { relative: 1e-9 });
    expectClose(step.pressPoint.y, 0, { absolute: 1e-9 });
    expect(step.pressDistances).toHaveLength(1);
    expect(step.pressDistances[0]?.from).toBe('left');
    expectClose(step.pressDistances[0]?.distance, 20, { relative: 1e-9 });
  });

  it('takes half the wedge times the face: 60·40·(e·60/2) µm', () => {
    expectClose(step.volume, (60 * 40 * e * 30) / 1000, { relative: 1e-9 });
    expect(plan.volume).toBe(step.volume);
  });

  it('makes right square, puts left right too and tapers the block to the top by the same wedge', () => {
    expectClose(zones(plan, 'right to bottom')[1], 0, { absolute: 1e-12 });
    expectClose(zones(plan, 'left to bottom')[1], 0, { absolute: 1e-12 });
    expectClose(zones(plan, 'top to bottom')[1], e * 60, { relative: 1e-9 });
    expectClose(zones(plan, 'right to left')[1], 0, { absolute: 1e-12 });
  });

  it('makes the height less by the wedge at the left, and leaves the width', () => {
    const [x, y, z] = plan.sizes;
    expect([x?.known, y?.known, z?.known]).toEqual([true, false, true]);
    for (const { comesOff } of x!.corners) expectClose(comesOff, 0);
    for (const { towards, before, after } of z!.corners) {
      expectClose(before, 0);
      expectClose(after, towards.includes('left') ? -e * 60 : 0);
    }
  });
});

describe('working the right face, the doubt leaving nothing of the tolerance', () => {
  const plan = planOn(TIGHT, 'right');
  const step = stepOf(plan);

  it('takes e·90 = 1.824 µm off the top edge and nothing off the bottom', () => {
    expect(step.highSide).toEqual(['top']);
    expectClose(step.wedge, e * 90, { relative: 1e-9 });
    expect(step.wedge.toFixed(3)).toBe('1.824');
    for (const { towards, removal } of step.corners) {
      expectClose(removal, towards.includes('top') ? e * 90 : 0, { absolute: 1e-12 });
    }
  });

  it('presses a third of the height in from the top edge: 15 mm from the middle', () => {
    expectClose(step.pressPoint.z, 15, { relative: 1e-9 });
    expectClose(step.pressPoint.y, 0, { absolute: 1e-9 });
    expectClose(step.pressDistances[0]?.distance, 30, { relative: 1e-9 });
  });

  it('leaves left as it was and tapers right to left by the same wedge', () => {
    const [before, after] = zones(plan, 'left to bottom');
    expectClose(before, e * 90, { relative: 1e-9 });
    expectClose(after, e * 90, { relative: 1e-9 });
    expectClose(zones(plan, 'right to left')[1], e * 90, { relative: 1e-9 });
    expectClose(zones(plan, 'top to bottom')[1], 0, { absolute: 1e-12 });
  });
});

/*
 * Of 3 µm, 1.5 may be used, and the guard g takes its part of that: the error comes down from 90e to
 * 1.5 - g, which is by c = 90e - (1.5 - g) over the 90 mm. Off the bottom, 60 mm long, that is c·60/90.
 */
describe('of a tolerance of 3 µm, half of it to be used', () => {
  const plans = plansWithin(3);
  const { before, guard } = effectOn(planOn(plans, 'bottom'), 'right to bottom');
  const c = 90 * e - (1.5 - guard);

  it('the guard is what the doubt of the readings may add, at 95 %', () => {
    const { standard, degreesOfFreedom } = before;
    expectClose(guard, standard * studentQuantile(0.95, degreesOfFreedom));
    expect(guard.toFixed(2)).toBe('1.04');
  });

  it.each([
    ['bottom', 'left', c * (60 / 90)],
    ['right', 'top', c],
  ] as const)('the %s loses at its %s edge what the error is over that: %d µm', (...expected) => {
    const [face, high, wedge] = expected;
    const plan = planOn(plans, face);
    const step = stepOf(plan);
    expect(step.highSide).toEqual([high]);
    expectClose(step.wedge, wedge, { relative: 1e-9 });
    for (const { towards, removal } of step.corners) {
      expectClose(removal, towards.includes(high) ? wedge : 0, { absolute: 1e-12 });
    }
    // Feathering to nothing, it is pressed at the same place as the whole wedge.
    expectClose(step.pressDistances[0]?.distance, face === 'bottom' ? 20 : 30, { relative: 1e-9 });
    const { after, allowed, doubtAlone } = effectOn(plan, 'right to bottom');
    expectClose(after.width, 1.5 - guard, { relative: 1e-9 });
    expect([allowed, doubtAlone]).toEqual([1.5, false]);
  });

  it('off the bottom puts left as far right, and tapers the block to the top by the wedge', () => {
    const plan = planOn(plans, 'bottom');
    expectClose(zones(plan, 'left to bottom')[1], 1.5 - guard, { relative: 1e-9 });
    expectClose(zones(plan, 'top to bottom')[1], c * (60 / 90), { relative: 1e-9 });
  });
});

describe('the order of the ways', () => {
  it('is least stock first: the bottom takes 40·60²·e/2, the right face 40·90²·e/2', () => {
    const possible = TIGHT.single.filter((plan) => plan.possible);
    expect(possible.map(({ faces }) => faces)).toEqual([['bottom'], ['right']]);
    expect(TIGHT.single.slice(0, 2)).toEqual(possible);
    expect(TIGHT.best.steps).toEqual(possible[0]?.steps);
  });
});

describe('a block that is as it should be', () => {
  it('is left alone', () => {
    const parallel = partWith([requirement('right', 'left', 1), requirement('top', 'bottom', 1)]);
    const { best, single, releases } = adviceOn(parallel, READINGS).plans;
    expect(releases).toEqual([]);
    expect(best.effects.map(({ doubtAlone }) => doubtAlone)).toEqual([true, true]);
    for (const plan of [best, ...single]) expect(plan).toMatchObject({ possible: true, steps: [] });
  });

  it('is left alone too where error and guard come to no more than half of the tolerance', () => {
    // 1.824 + 1.045 = 2.869.
    expect(plansWithin(2 * 2.87).best).toMatchObject({ possible: true, steps: [] });
    expect(plansWithin(2 * 2.86).best.steps).toHaveLength(1);
  });
});
