import type { PlanStep } from '../../core/correction/plan/plan';
import { pressedBeyond } from '../../core/correction/setting/beyond-kern';
import type { Part } from '../../core/part/part';
import { shop } from '../../state/shop';
import { beyondKernInWords } from '../../words/methods';

interface PressLimitProps {
  readonly step: PlanStep;
  readonly part: Part;
}

/** A hand may be off the press point by as much as this share of the way to the edge. */
const OFF = 0.25;

/** A wedge that feathers out is pressed at the very limit: what happens beyond it. */
export function PressLimit({ step, part }: PressLimitProps) {
  const { further, contact } = pressedBeyond(part.block, step.face, step.pressPoint, OFF);
  return <p class="small">{beyondKernInWords(further, contact, shop.value.units.size)}</p>;
}
