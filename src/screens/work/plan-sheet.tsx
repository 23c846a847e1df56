import type { Plan, PlanStep } from '../../core/correction/plan/plan';
import type { InspectionAnswer } from '../../core/inspection/inspect';
import type { Part } from '../../core/part/part';
import type { WayOfWorking } from '../../entry/way-of-working';
import { shop } from '../../state/shop';
import { Later } from '../../widgets/later';
import { VerdictBadge } from '../../widgets/verdict-badge';
import { requirementName } from '../../words/faces';
import { deviationNumber } from '../../words/numbers';
import { shortOfAimInWords, sizeLeftInWords, volumeInWords } from '../../words/plans';
import { PlanInSpace } from './plan-in-space';
import { StepSheet } from './step-sheet';

interface PlanSheetProps {
  readonly plan: Plan;
  readonly part: Part;
  readonly answer: InspectionAnswer;
  /** How it would be lapped. */
  readonly way: WayOfWorking;
  readonly onLog: ((step: PlanStep) => void) | undefined;
  readonly tentative: boolean;
}

/** A plan: the block with what is to come off it, each face to work, and what is left after. */
export function PlanSheet({ plan, part, answer, ...rest }: PlanSheetProps) {
  return (
    <div class="stack">
      <Later turns={1}>
        <PlanInSpace plan={plan} part={part} answer={answer} />
      </Later>
      {plan.steps.map((step) => (
        <StepSheet key={step.face} step={step} part={part} answer={answer} {...rest} />
      ))}
      {plan.steps.length > 1 && (
        <p class="note">
          One face at a time: work the first, measure again, and take the next from what is found
          then.
        </p>
      )}
      <AfterPlan plan={plan} part={part} />
    </div>
  );
}

/** What the plan leaves of every requirement and of the sizes. */
function AfterPlan({ plan, part }: Pick<PlanSheetProps, 'plan' | 'part'>) {
  const { units } = shop.value;
  const sizes = plan.sizes.filter(({ corners }) => corners.some(({ comesOff }) => comesOff > 0));
  const warnings = plan.effects.flatMap((effect) => shortOfAimInWords(effect) ?? []);
  return (
    <section class="sheet" aria-label="After that">
      <h4>After that, if exactly so much comes off</h4>
      {warnings.map((warning) => (
        <p key={warning} class="note note-warning">
          {warning}
        </p>
      ))}
      <EffectsTable effects={plan.effects} />
      <ul class="effects small">
        {sizes.map((one) => (
          <li key={one.axis}>{sizeLeftInWords(one, part.block.size[one.axis], units)}</li>
        ))}
        <li>Stock: {volumeInWords(plan.volume, units.size)}</li>
      </ul>
    </section>
  );
}

/** Each requirement now and then, beside what the drawing allows. */
function EffectsTable({ effects }: Pick<Plan, 'effects'>) {
  const { deviation } = shop.value.units;
  const bare = (value: number) => deviationNumber(value, deviation);
  return (
    <table>
      <caption>
        In {deviation}, over the full face; + is the guard for the doubt of the readings
      </caption>
      <thead>
        <tr>
          <th scope="col">Requirement</th>
          <th scope="col">now</th>
          <th scope="col">then</th>
          <th scope="col">allowed</th>
        </tr>
      </thead>
      <tbody>
        {effects.map(({ requirement, withForm, guard, verdict }) => (
          <tr key={requirement.id}>
            <th scope="row">{requirementName(requirement)}</th>
            <td>{bare(withForm.before)}</td>
            <td>
              {bare(withForm.after)} + {bare(guard)}
              <br />
              <VerdictBadge verdict={verdict} />
            </td>
            <td>{bare(requirement.tolerance)}</td>
          </tr>
        ))}
      </tbody>
    </table>
  );
}
