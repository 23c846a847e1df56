import { once } from '../../once';
import { FACES, type Face } from '../../part/faces';
import type { Part } from '../../part/part';
import { effectOf } from '../effects';
import { type Aim, aimOf, type Demand } from './aim';
import { guardedWidth } from './form-rows';
import { guardedSizes } from './guard';
import { byMerit } from './order';
import type { MeasuredRequirement, Plan, PlannedEffect, PlanStep } from './plan';
import { plannedSizes } from './planned-sizes';
import { type PlanProblem, type PlanSolution, solveNearest, solvePlan } from './problem';
import { sizeRows } from './size-rows';
import type { Sizes } from './sizes';
import { stepsOf } from './steps';
import { stopsOf } from './stops';

/** Volumes that differ by less than this part are the same but for rounding. */
const ALIKE = 1e-9;

/** The plans that bring a part right. */
export interface Plans {
  /** The best over all faces that may be worked. */
  readonly best: Plan;
  /**
   * Where that is not possible: the finished faces any one of which, were it workable, would make
   * it so.
   */
  readonly releases: readonly Face[];
  /** The best on each single face: first those that are possible, least volume first. */
  readonly single: readonly Plan[];
}

/** Plans that are worked out when they are first asked for. */
export interface PlansInPieces {
  /** Each works out a piece of them: all of them called, `plans` has next to nothing left to do. */
  readonly pieces: readonly (() => void)[];
  plans(): Plans;
}

/**
 * Plans for the faces of `part` that are not finished: plane removals that bring the width of every
 * requirement that was measured, with a guard for its doubt, to the share of its tolerance, keep every
 * size that is known above its lower limit, and take least stock (a linear program: the widths are
 * sums of sizes of linear forms).
 *
 * @throws RangeError where level, share or a tolerance is out of its range.
 */
export function plansFor(...given: Parameters<typeof plansInPieces>): Plans {
  return plansInPieces(...given).plans();
}

/** The same piece by piece, for who must not be kept waiting. @throws RangeError as `plansFor` does. */
export function plansInPieces(
  part: Part,
  measured: readonly MeasuredRequirement[],
  sizes: Sizes,
  demand: Demand,
): PlansInPieces {
  refuseNonsense(measured, demand);
  const guarded = guardedSizes(sizes, demand.level);
  const problem: PlanProblem = {
    part,
    level: demand.level,
    aims: measured.map((one) => aimOf(one, part.block, demand)),
    sizes: guarded,
    sizeRows: sizeRows(part, guarded),
  };
  const workable = FACES.filter((face) => !part.finished.includes(face));
  const onEach = workable.map((face) => once(() => planOn(problem, [face])));
  const onAll = once(() => planOn(problem, workable));
  const plans = once((): Plans => {
    const single = onEach.map((plan) => plan()).sort(byMerit);
    const best = simplest(onAll(), single);
    return { best, releases: best.possible ? [] : releasesOf(problem, workable), single };
  });
  return { pieces: [...onEach, onAll, plans], plans };
}

function planOn(problem: PlanProblem, faces: readonly Face[]): Plan {
  const solution = solvePlan(problem, faces);
  if (solution !== undefined) return planFrom(problem, faces, solution, []);
  const nearest = solveNearest(problem, faces);
  return planFrom(problem, faces, nearest, stopsOf(problem, nearest));
}

/** `best`, or the first of the `single` plans where that takes no more: one face is less work than two. */
function simplest(best: Plan, single: readonly Plan[]): Plan {
  const [first] = single;
  if (first === undefined || !first.possible) return best;
  return first.volume <= best.volume * (1 + ALIKE) ? { ...first, faces: best.faces } : best;
}

function planFrom(
  problem: PlanProblem,
  faces: readonly Face[],
  solution: PlanSolution,
  stops: Plan['stops'],
): Plan {
  const steps = stepsOf(problem.part.block, faces, solution);
  return {
    faces,
    possible: stops.length === 0,
    stops,
    steps,
    volume: steps.reduce((total, { volume }) => total + volume, 0),
    wedge: steps.reduce((total, { wedge }) => total + wedge, 0),
    effects: problem.aims.map((aim) => effectOn(problem, aim, steps)),
    sizes: plannedSizes(problem, steps),
  };
}

function effectOn(
  { part, level }: PlanProblem,
  { measured, places, allowed, doubtAlone, formAlone }: Aim,
  steps: readonly PlanStep[],
): PlannedEffect {
  const { requirement, zone, formPoints } = measured;
  const removals = steps.map(({ removal }) => removal);
  const effect = effectOf(removals, requirement, zone, part.block, level, formPoints);
  const parts = effect.after.parts.map(({ value }) => value);
  const guard = guardedWidth(parts, places) - effect.withForm.after;
  return { ...effect, allowed, doubtAlone, formAlone, guard };
}

function releasesOf(problem: PlanProblem, workable: readonly Face[]): readonly Face[] {
  return problem.part.finished.filter(
    (face) => solvePlan(problem, [...workable, face]) !== undefined,
  );
}

function refuseNonsense(measured: readonly MeasuredRequirement[], { level, share }: Demand): void {
  if (!(level > 0.5 && level < 1)) throw new RangeError('The level lies between 0.5 and 1');
  if (!(share > 0 && share <= 1)) throw new RangeError('A share is above 0 and no more than 1');
  if (!measured.every(({ requirement }) => requirement.tolerance > 0)) {
    throw new RangeError('A tolerance is above 0');
  }
}
