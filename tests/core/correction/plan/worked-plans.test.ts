import { describe, expect, it } from 'vitest';
import type { Plan, PlanStep } from '../../../../src/core/correction/plan/plan';
import { plansFor } from '../../../../src/core/correction/plan/plans-for';
import type { Sizes } from '../../../../src/core/correction/plan/sizes';
import type { Face } from '../../../../src/core/part/faces';
import type { Part } from '../../../../src/core/part/part';
import type { Requirement } from '../../../../src/core/part/requirement';
import type { Zone } from '../../../../src/core/zones/zone';
import { expectClose } from '../../support/close';
import { known } from '../../support/known';
import { BLOCK, partWith, requirement } from '../../support/worked-block';
import { doubleZone, simpleZone } from '../../support/zones';
import { NO_SIZES, sizeOf } from './support/problems';

/*
 * The block 60 × 40 × 90 of the worked cases: right is obtuse to the bottom by e = 3/148 µm/mm,
 * which is 1.824 µm over its 90 mm. Of a tolerance of 2 µm half is to be used, 1 µm: e has to come
 * down by d = (90e - 1)/90 = 0.00916 µm/mm. That is a wedge of 60d = 0.5495 µm off the left edge
 * of the bottom, or of 90d = 0.8243 µm off the top edge of the right face. Nothing is in doubt.
 */
const e = 3 / 148;
const d = e - 1 / 90;
const RIGHT = requirement('right', 'bottom', 2);
const TOP = requirement('top', 'bottom', 0.4);
const HALF = { level: 0.95, share: 0.5 };

interface Case {
  readonly finished?: readonly Face[];
  readonly sizes?: Sizes;
  readonly sizeLimits?: Part['sizeLimits'];
  readonly demand?: typeof HALF;
}

function plansOf(zones: readonly (readonly [Requirement, Zone])[], one: Case = {}) {
  const { finished = [], sizes = NO_SIZES, sizeLimits = {}, demand = HALF } = one;
  const part = {
    ...partWith(
      zones.map(([of]) => of),
      finished,
    ),
    sizeLimits,
  };
  const measured = zones.map(([of, zone]) => ({ requirement: of, zone, formPoints: [] }));
  return plansFor(part, measured, sizes, demand);
}

const LEANING = [RIGHT, simpleZone(90 * e, 0)] as const;
const PARALLEL = [TOP, doubleZone([0, 0], [0, 0])] as const;

function on(plans: ReturnType<typeof plansOf>, face: Face): Plan {
  return known(plans.single.find((plan) => plan.faces[0] === face));
}

function stepOn(plan: Plan, face: Face): PlanStep {
  return known(plan.steps.find((step) => step.face === face));
}

/** Widths of a requirement before and after, µm. */
function widths(plan: Plan, id: string): readonly [number, number] {
  const { before, after } = known(plan.effects.find((one) => one.requirement.id === id)).withForm;
  return [before, after];
}

describe('right obtuse to the bottom', () => {
  const plans = plansOf([LEANING]);

  it('is best put right on the bottom, whose LEFT edge is the high one: 60d off it', () => {
    const { best } = plans;
    expect(best).toEqual({ ...on(plans, 'bottom'), faces: best.faces });
    expect(best.possible).toBe(true);
    expect(best.steps.map(({ face }) => face)).toEqual(['bottom']);
    const [step] = best.steps;
    expect(step?.highSide).toEqual(['left']);
    expectClose(step?.wedge, 60 * d);
    expect(step?.wedge.toFixed(4)).toBe('0.5495');
    for (const { towards, removal } of step!.corners) {
      expectClose(removal, towards.includes('left') ? 60 * d : 0);
    }
    expectClose(best.volume, (60 * 40 * 30 * d) / 1000);
    expectClose(best.wedge, 60 * d);
    expectClose(step?.pressPoint.x, -10);
    expect(step?.pressDistances.map(({ from }) => from)).toEqual(['left']);
    expectClose(step?.pressDistances[0]?.distance, 20);
  });

  it('is put right on the right face at its TOP edge: 90d off it', () => {
    const [step] = on(plans, 'right').steps;
    expect(step?.highSide).toEqual(['top']);
    expectClose(step?.wedge, 90 * d);
    expect(step?.wedge.toFixed(4)).toBe('0.8243');
    expectClose(on(plans, 'right').volume, (40 * 90 * 45 * d) / 1000);
  });

  it('comes down to the share of the tolerance, no less', () => {
    for (const face of ['bottom', 'right'] as const) {
      const [before, after] = widths(on(plans, face), RIGHT.id);
      expectClose(before, 90 * e);
      expectClose(after, 1);
      expect(on(plans, face).effects[0]?.verdict).toBe('in');
    }
  });

  it('cannot be put right on any other face: it stays over by 90d', () => {
    expect(plans.single.map(({ faces, possible }) => [faces[0], possible])).toEqual([
      ['bottom', true],
      ['right', true],
      ...['left', 'back', 'front', 'top'].map((face) => [face, false]),
    ]);
    for (const { stops, steps } of plans.single.slice(2)) {
      expect(steps).toEqual([]);
      expect(stops).toMatchObject([{ kind: 'requirement', requirement: RIGHT }]);
      expectClose(stops[0]?.kind === 'requirement' ? stops[0].excess : undefined, 90 * d);
    }
  });

  it('to half of a micrometre nothing is to be done, on any face', () => {
    const { best, single, releases } = plansOf([[RIGHT, simpleZone(0.5, 0)]]);
    expect(releases).toEqual([]);
    for (const plan of [best, ...single]) {
      expect(plan).toMatchObject({ possible: true, steps: [], stops: [], volume: 0, wedge: 0 });
    }
  });
});

describe('right obtuse to the bottom, top to be parallel to it within 0.4 µm', () => {
  // The trap: off the bottom comes a wedge, and by as much the block tapers towards the top. Of that
  // 0.2 µm may stay.
  it('wants the top worked too where it may be: 60d off the left of the bottom, 60d - 0.2 off that of the top', () => {
    const { best } = plansOf([LEANING, PARALLEL]);
    expect(best.possible).toBe(true);
    expect(best.steps.map(({ face }) => face)).toEqual(['top', 'bottom']);
    expect(stepOn(best, 'bottom').highSide).toEqual(['left']);
    expectClose(stepOn(best, 'bottom').wedge, 60 * d);
    // What came off the left of the bottom has to come off the right of the top.
    expect(stepOn(best, 'top').highSide).toEqual(['right']);
    expectClose(stepOn(best, 'top').wedge, 60 * d - 0.2);
    expectClose(widths(best, RIGHT.id)[1], 1);
    expectClose(widths(best, TOP.id)[1], 0.2);
  });

  it('with the top finished: 0.2 off the bottom, the rest off the right face', () => {
    const { best } = plansOf([LEANING, PARALLEL], { finished: ['top'] });
    expect(best.steps.map(({ face }) => face)).toEqual(['right', 'bottom']);
    expectClose(stepOn(best, 'bottom').wedge, 0.2);
    expectClose(stepOn(best, 'right').wedge, 90 * (d - 0.2 / 60));
    expectClose(widths(best, RIGHT.id)[1], 1);
    expectClose(widths(best, TOP.id)[1], 0.2);
  });

  it('on the bottom alone the two requirements fight, and each plan says by how much', () => {
    const plan = on(plansOf([LEANING, PARALLEL]), 'bottom');
    expect(plan.possible).toBe(false);
    // Excess over tolerance: 1 µm of wedge costs 1/0.4 of the top's, and saves 1.5/2 of the right's.
    expect(stepOn(plan, 'bottom').highSide).toEqual(['left']);
    expectClose(stepOn(plan, 'bottom').wedge, 0.2);
    expect(plan.stops).toMatchObject([{ kind: 'requirement', requirement: RIGHT }]);
    expectClose(widths(plan, RIGHT.id)[1], 90 * e - 1.5 * 0.2);
    expectClose(widths(plan, TOP.id)[1], 0.2);
  });

  it('on the right face alone there is no such trap', () => {
    const plan = on(plansOf([LEANING, PARALLEL]), 'right');
    expect(plan.possible).toBe(true);
    expect(widths(plan, TOP.id)).toEqual([0, 0]);
  });
});

describe('faces that are finished', () => {
  it('stop a plan, and each one that would do is named', () => {
    const { best, releases, single } = plansOf([LEANING], { finished: ['right', 'bottom', 'top'] });
    expect(best.possible).toBe(false);
    expect(best.steps).toEqual([]);
    expect(best.stops).toMatchObject([{ kind: 'requirement', requirement: RIGHT }]);
    expect(releases).toEqual(['right', 'bottom']);
    expect(single.map(({ faces }) => faces[0]).sort()).toEqual(['back', 'front', 'left']);
  });

  it('may be all of them', () => {
    const finished: readonly Face[] = ['right', 'left', 'back', 'front', 'top', 'bottom'];
    const { best, releases, single } = plansOf([LEANING], { finished });
    expect(best).toMatchObject({ faces: [], possible: false, steps: [], volume: 0 });
    expect(releases).toEqual(['right', 'bottom']);
    expect(single).toEqual([]);
    expect(plansOf([], { finished }).best.possible).toBe(true);
  });

  it('are not named where one of them alone would not do', () => {
    // Back leans too: two more faces are wanted.
    const back = requirement('back', 'left', 2);
    const finished: readonly Face[] = ['right', 'left', 'back', 'bottom'];
    const { releases } = plansOf([LEANING, [back, simpleZone(3, 0)]], { finished });
    expect(releases).toEqual([]);
  });
});

describe('a size that a cut would make too small', () => {
  const sizes = { ...NO_SIZES, z: sizeOf(BLOCK, 'z', 0) };
  const atLeast = (lower: number) => ({ z: { lower } });

  it('turns the plan to another face', () => {
    // 60d = 0.5495 off the left edge; 0.5 may go there.
    const plans = plansOf([LEANING], { sizes, sizeLimits: atLeast(-0.5) });
    expect(plans.best.possible).toBe(true);
    expect(plans.best.steps.map(({ face }) => face)).toEqual(['right', 'bottom']);
    expectClose(stepOn(plans.best, 'bottom').wedge, 0.5);
    expectClose(stepOn(plans.best, 'right').wedge, 90 * (d - 0.5 / 60));
    const size = known(plans.best.sizes.find(({ axis }) => axis === 'z'));
    for (const { towards, comesOff, before, after, short } of size.corners) {
      const isLeft = towards.includes('left');
      expectClose(comesOff, isLeft ? 0.5 : 0);
      expectClose(before, 0);
      expectClose(after, isLeft ? -0.5 : 0);
      expectClose(short, 0);
    }
  });

  it('stops it where no other will do, short by 60d - 0.5', () => {
    const { best, releases } = plansOf([LEANING], {
      ...{ sizes, sizeLimits: atLeast(-0.5) },
      finished: ['right', 'left', 'back', 'front', 'top'],
    });
    expect(best.possible).toBe(false);
    expect(best.stops).toMatchObject([{ kind: 'size', axis: 'z', before: 0 }]);
    const [stop] = best.stops;
    expectClose(stop?.kind === 'size' ? stop.shortfall : undefined, 60 * d - 0.5);
    // The requirement is held all the same: sizes give way first.
    expectClose(widths(best, RIGHT.id)[1], 1);
    expect(releases).toEqual(['right']);
  });

  it('stops every plan where it is too small as it is, and the plan takes no more there', () => {
    const { best, single } = plansOf([LEANING], { sizes, sizeLimits: atLeast(0.3) });
    expect(best.possible).toBe(false);
    expect(best.stops).toEqual([{ kind: 'size', axis: 'z', shortfall: 0.3, before: 0.3 }]);
    expect(best.steps.map(({ face }) => face)).toEqual(['right']);
    // Least short first, though the bottom would take less stock.
    expect(single.slice(0, 2).map(({ faces }) => faces[0])).toEqual(['right', 'bottom']);
  });

  it('limits by what is sure of it: 0.3 less at the level of 95 %, its doubt being 0.3/1.645', () => {
    const doubtful = { ...NO_SIZES, z: sizeOf(BLOCK, 'z', 0, 0.3 / 1.6448536269514722) };
    const { best } = plansOf([LEANING], { sizes: doubtful, sizeLimits: atLeast(-0.5) });
    expectClose(stepOn(best, 'bottom').wedge, 0.2, { absolute: 1e-9 });
    const size = known(best.sizes.find(({ axis }) => axis === 'z'));
    for (const { guard } of size.corners) expectClose(guard, 0.3, { absolute: 1e-9 });
  });

  it('does not limit where it is not known, and the plan says so, and what comes off', () => {
    const { best } = plansOf([LEANING], { sizeLimits: atLeast(-0.5) });
    expect(best.steps.map(({ face }) => face)).toEqual(['bottom']);
    const size = known(best.sizes.find(({ axis }) => axis === 'z'));
    expect(size).toMatchObject({ known: false, limits: { lower: -0.5 } });
    for (const { towards, comesOff, before, after } of size.corners) {
      expectClose(comesOff, towards.includes('left') ? 60 * d : 0);
      expect([before, after]).toEqual([undefined, undefined]);
    }
  });

  it('never stops a plan by its upper limit, but is told where it is over and stays so', () => {
    const { best } = plansOf([LEANING], { sizes, sizeLimits: { z: { upper: -0.4 } } });
    expect(best.possible).toBe(true);
    const size = known(best.sizes.find(({ axis }) => axis === 'z'));
    for (const { towards, over } of size.corners) {
      expectClose(over, towards.includes('left') ? 0 : 0.4);
    }
  });
});
