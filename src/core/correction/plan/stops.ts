import { AXES, type Axis } from '../../part/faces';
import type { Stop } from './plan';
import type { PlanProblem, PlanSolution } from './problem';
import { NOTHING } from './rounding';
import { shortfallOf } from './size-rows';

/** What gave way in the nearest solution, requirements first. */
export function stopsOf(problem: PlanProblem, nearest: PlanSolution): readonly Stop[] {
  const requirements = problem.aims.map(({ measured, excess }): Stop => {
    const { requirement } = measured;
    return { kind: 'requirement', requirement, excess: nearest.get(excess)! };
  });
  const sizes = AXES.map((axis): Stop => {
    const before = shortfallBefore(problem, axis);
    return { kind: 'size', axis, shortfall: nearest.get(shortfallOf(axis))!, before };
  });
  return [...requirements, ...sizes].filter((stop) => amountOf(stop) > NOTHING);
}

/** µm. */
function amountOf(stop: Stop): number {
  return stop.kind === 'size' ? stop.shortfall : stop.excess;
}

function shortfallBefore({ part, sizes }: PlanProblem, axis: Axis): number {
  const lower = part.sizeLimits?.[axis]?.lower ?? Number.NEGATIVE_INFINITY;
  const shortfalls = (sizes[axis] ?? []).map(({ departure, guard }) => lower - departure + guard);
  return Math.max(0, ...shortfalls);
}
