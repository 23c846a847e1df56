import type { Plan } from '../../core/correction/plan/plan';
import type { InspectionAnswer } from '../../core/inspection/inspect';
import { shapeOf } from '../../core/inspection/shape';
import type { Part } from '../../core/part/part';
import { shop } from '../../state/shop';
import { TurningBlock } from '../../widgets/drawings/turning-block/turning-block';
import { correctionInWords } from '../../words/corrections';
import { highSideName } from '../../words/faces';

interface PlanInSpaceProps {
  readonly plan: Pick<Plan, 'steps'>;
  readonly part: Part;
  readonly answer: InspectionAnswer;
}

/** The block as it was measured, with what is to come off it; it can be turned. */
export function PlanInSpace({ plan, part, answer }: PlanInSpaceProps) {
  const { deviation } = shop.value.units;
  return (
    <TurningBlock
      block={{
        size: part.block.size,
        slopes: shapeOf(part, answer.adjustment),
        datum: { face: part.datum, letter: 'A' },
        removals: plan.steps.map(({ face, corners, highSide, pressPoint }) => ({
          ...{ face, corners, highSide },
          highText: `${highSideName(highSide)} high`,
          press: pressPoint,
        })),
      }}
      label={plan.steps.map((step) => correctionInWords(step, deviation)).join(' ')}
    />
  );
}
