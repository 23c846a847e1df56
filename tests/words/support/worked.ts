import type { Plan, PlanStep } from '../../../src/core/correction/plan/plan';
import type { Part } from '../../../src/core/part/part';
import type { Reading } from '../../../src/core/readings/reading';
import { adviceOn, planOn } from '../../core/support/advised';
import { known } from '../../core/support/known';
import { assumedParallel, nose } from '../../core/support/readings';
import { partWith, requirement } from '../../core/support/worked-block';

/**
 * A block 60 × 40 × 90 on its bottom, faces assumed parallel: the comparator with its nose at 6 and
 * indicator at 80 shows 34 µm on the right and 31 on the left. Right is obtuse by
 * 3/148 = 0.02027 µm/mm, over its height of 90 by 1.824 µm. It is to be square within 1 µm, less than
 * the doubt of the readings: so all of the error is to come off.
 */
export const PART: Part = partWith([requirement('right', 'bottom', 1)]);

const READINGS: readonly Reading[] = [
  nose('right', 34),
  nose('left', 31),
  assumedParallel('right'),
];

/** The plan that brings `part` right by working `face` alone. */
export function workedPlan(face: 'bottom' | 'right', part = PART): Plan {
  return planOn(adviceOn(part, READINGS).plans, face);
}

/** The one step of that plan. */
export function workedStep(face: 'bottom' | 'right'): PlanStep {
  return known(workedPlan(face).steps[0]);
}
