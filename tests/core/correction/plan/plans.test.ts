import { describe, expect, it } from 'vitest';
import type { Plan } from '../../../../src/core/correction/plan/plan';
import { plansFor } from '../../../../src/core/correction/plan/plans-for';
import { leastRemoval, volumeOf } from '../../../../src/core/correction/removal';
import { expectClose } from '../../support/close';
import { manyRandoms } from '../../support/random';
import { slopesToNothing } from '../../support/slopes-to-nothing';
import { partWith, requirement } from '../../support/worked-block';
import { simpleZone } from '../../support/zones';
import { ANYTHING, anyProblem, NO_SIZES, type Problem, plansOf } from './support/problems';

const PROBLEMS: readonly Problem[] = manyRandoms(300).map((random) => anyProblem(random));

/** Every plan for every problem. */
const PLANS = PROBLEMS.flatMap((problem) => {
  const { best, single } = plansOf(problem);
  return [best, ...single].map((plan) => ({ problem, plan }));
});

function volumeOfBest(problem: Problem): number | undefined {
  const { best } = plansOf(problem);
  return best.possible ? best.volume : undefined;
}

describe('every plan', { timeout: 60_000 }, () => {
  it('puts nothing on, spares a corner of each face it works, and takes its wedge at the high side', () => {
    let steps = 0;
    for (const { plan } of PLANS) {
      for (const { corners, highSide, wedge, removal, volume } of plan.steps) {
        steps += 1;
        const removals = corners.map((corner) => corner.removal);
        expect(Math.min(...removals)).toBeGreaterThanOrEqual(0);
        expect(Math.min(...removals)).toBeLessThan(1e-7);
        expect(Math.max(...removals)).toBe(wedge);
        expect(highSide.length).toBeGreaterThan(0);
        for (const { towards, removal: off } of corners) {
          if (highSide.every((side) => towards.includes(side))) expectClose(off, wedge);
        }
        expect(removal.mean).toBeGreaterThan(0);
        expect(volume).toBeGreaterThan(0);
      }
    }
    expect(steps).toBeGreaterThan(500);
  });

  it('works only faces that it may, each once', () => {
    for (const { problem, plan } of PLANS) {
      const faces = plan.steps.map(({ face }) => face);
      expect(new Set(faces).size).toBe(faces.length);
      for (const face of faces) {
        expect(plan.faces).toContain(face);
        expect(problem.part.finished).not.toContain(face);
      }
    }
  });

  it('is possible just where it says nothing stops it, and then does all that was asked', () => {
    for (const { problem, plan } of PLANS) {
      expect(plan.possible).toBe(plan.stops.length === 0);
      if (!plan.possible) continue;
      for (const { withForm, guard, allowed, doubtAlone, formAlone } of plan.effects) {
        if (doubtAlone || formAlone) continue;
        expect(withForm.after + guard).toBeLessThan(allowed + 1e-7);
      }
      for (const { axis, corners } of plan.sizes) {
        const lower = problem.part.sizeLimits?.[axis]?.lower;
        for (const { after, guard, short } of corners) {
          expect(short).toBeLessThan(1e-7);
          if (lower !== undefined && after !== undefined) {
            expect(after - guard).toBeGreaterThan(lower - 1e-7);
          }
        }
      }
    }
  });

  it('says of a stopped one what stays over, and shows just that in its effects and sizes', () => {
    let stops = 0;
    for (const { plan } of PLANS) {
      for (const stop of plan.stops) {
        stops += 1;
        if (stop.kind === 'size') {
          const { corners } = plan.sizes.find(({ axis }) => axis === stop.axis)!;
          const short = Math.max(...corners.map((corner) => corner.short));
          expectClose(short, stop.shortfall, { absolute: 1e-7 });
        } else {
          const effect = plan.effects.find((one) => one.requirement === stop.requirement)!;
          if (effect.doubtAlone || effect.formAlone) continue;
          const over = effect.withForm.after + effect.guard - effect.allowed;
          expectClose(over, stop.excess, { absolute: 1e-7 });
        }
      }
    }
    expect(stops).toBeGreaterThan(300);
  });

  it('adds its steps up', () => {
    for (const { plan } of PLANS) {
      const sum = (of: (step: Plan['steps'][number]) => number) =>
        plan.steps.reduce((total, step) => total + of(step), 0);
      expectClose(
        plan.volume,
        sum(({ volume }) => volume),
      );
      expectClose(
        plan.wedge,
        sum(({ wedge }) => wedge),
      );
    }
  });
});

describe('the best plan', { timeout: 60_000 }, () => {
  it('takes no more than the best on any single face', () => {
    for (const problem of PROBLEMS) {
      const { best, single } = plansOf(problem);
      for (const plan of single) {
        if (!plan.possible) continue;
        expect(best.possible).toBe(true);
        expect(best.volume).toBeLessThan(plan.volume + 1e-9);
      }
    }
  });

  it('takes no more for a requirement less, a limit less, a finished face less or a greater share', () => {
    for (const problem of PROBLEMS) {
      const volume = volumeOfBest(problem);
      if (volume === undefined) continue;
      const { part, measured, demand } = problem;
      const easier: readonly Problem[] = [
        { ...problem, measured: measured.slice(1) },
        { ...problem, part: { ...part, sizeLimits: {} } },
        { ...problem, part: { ...part, finished: part.finished.slice(1) } },
        { ...problem, demand: { ...demand, share: (1 + demand.share) / 2 } },
        { ...problem, sizes: NO_SIZES },
      ];
      for (const one of easier) expect(volumeOfBest(one)).toBeLessThan(volume + 1e-9);
    }
  });

  it('takes no more than the simple wedge that brings a single requirement to nothing', () => {
    let less = 0;
    for (const random of manyRandoms(300, 3)) {
      const { measured, demand, part } = anyProblem(random, { ...ANYTHING, form: 0 });
      const [one] = measured;
      if (one === undefined) continue;
      const { requirement: of, zone } = one;
      const plans = plansFor(partWith([of], [], part.block), [one], NO_SIZES, demand);
      for (const face of [of.face, of.datum]) {
        const slopes = slopesToNothing(of, face, zone, part.block);
        const simple = volumeOf(part.block, leastRemoval(part.block, face, slopes));
        const own = plans.single.find(({ faces }) => faces[0] === face);
        expect(own?.possible).toBe(true);
        expect(own?.volume).toBeLessThan(simple + 1e-9);
        expect(plans.best.volume).toBeLessThan(simple + 1e-9);
        if (own!.volume < 0.99 * simple) less += 1;
        // Where doubt leaves nothing else to aim at, it is that very wedge.
        if (zone.parts.length === 1 && plans.best.effects[0]?.doubtAlone) {
          expectClose(own?.volume, simple, { absolute: 1e-9 });
        }
      }
    }
    expect(less).toBeGreaterThan(100);
  });
});

describe('plans are refused', () => {
  const one = requirement('right', 'bottom');
  const measured = [{ requirement: one, zone: simpleZone(3, 0.5), formPoints: [] }];
  const part = partWith([one]);

  it.each([0, -0.5, 1.1, Number.NaN])('for a share of %d', (share) => {
    const demand = { level: 0.95, share };
    expect(() => plansFor(part, measured, NO_SIZES, demand)).toThrow(RangeError);
  });

  it.each([0.5, 1, 0, Number.NaN])('for a level of %d', (level) => {
    const demand = { level, share: 0.5 };
    expect(() => plansFor(part, measured, NO_SIZES, demand)).toThrow(RangeError);
  });

  it.each([0, -1, Number.NaN])('for a tolerance of %d', (tolerance) => {
    const none = measured.map((of) => ({ ...of, requirement: { ...one, tolerance } }));
    const demand = { level: 0.95, share: 0.5 };
    expect(() => plansFor(part, none, NO_SIZES, demand)).toThrow(RangeError);
  });
});
