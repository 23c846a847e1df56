import { cornersOf } from '../../part/block';
import { thicknessDeparture } from '../../part/face-errors';
import { AXES, type Axis, faceTowards } from '../../part/faces';
import { evaluate, type LinearForm } from '../../part/linear-form';
import { changeByAll } from '../removal';
import type { PlannedCorner, PlannedSize, PlanStep } from './plan';
import type { PlanProblem } from './problem';

/** The sizes as `steps` leave them. */
export function plannedSizes(
  problem: PlanProblem,
  steps: readonly PlanStep[],
): readonly PlannedSize[] {
  const change = changeByAll(steps.map(({ removal }) => removal));
  return AXES.map((axis) => plannedSize(problem, axis, change));
}

function plannedSize({ part, sizes }: PlanProblem, axis: Axis, change: LinearForm): PlannedSize {
  const limits = part.sizeLimits?.[axis] ?? {};
  const face = faceTowards(axis, 1);
  const measured = sizes[axis];
  const corners = cornersOf(part.block, face).map((corner, index): PlannedCorner => {
    // 0 - 0 is 0, and -0 would not be.
    const comesOff = 0 - evaluate(thicknessDeparture(face, corner.point), change);
    const known = measured?.[index];
    if (known === undefined) {
      return {
        ...corner,
        comesOff,
        before: undefined,
        after: undefined,
        guard: 0,
        short: 0,
        over: 0,
      };
    }
    const { departure, guard } = known;
    const after = departure - comesOff;
    const { lower = Number.NEGATIVE_INFINITY, upper = Number.POSITIVE_INFINITY } = limits;
    return {
      ...corner,
      comesOff,
      before: departure,
      after,
      guard,
      short: Math.max(0, lower - after + guard),
      over: Math.max(0, after - upper),
    };
  });
  return { axis, limits, known: measured !== undefined, corners };
}
