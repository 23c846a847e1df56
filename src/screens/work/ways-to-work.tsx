import { useState } from 'preact/hooks';
import type { Plan, PlanStep } from '../../core/correction/plan/plan';
import type { Plans } from '../../core/correction/plan/plans-for';
import { type WayOrder, waysOf } from '../../core/correction/plan/ways';
import type { InspectionAnswer } from '../../core/inspection/inspect';
import type { Part } from '../../core/part/part';
import type { WayOfWorking } from '../../entry/way-of-working';
import { typedShare } from '../../state/advice';
import { shop } from '../../state/shop';
import { Choice } from '../../widgets/choice';
import { Fold } from '../../widgets/fold';
import { KeyboardWay } from '../../widgets/keyboard-way';
import { planName, releasesInWords, stopInWords, volumeInWords } from '../../words/plans';
import { Cautions } from './cautions';
import { PlanSheet } from './plan-sheet';

export interface WaysToWorkProps {
  readonly part: Part;
  readonly answer: InspectionAnswer;
  readonly plans: Plans;
  /** How it would be lapped. */
  readonly way: WayOfWorking;
  /** Nothing is urgent where all is in, and nothing is sure where the doubt is larger than the error. */
  readonly tentative: boolean;
  readonly onLog: ((step: PlanStep) => void) | undefined;
}

const ORDERS = [
  ['stock', 'Least stock'],
  ['time', 'Least time'],
] as const;

/** The best plan in full, the others folded away, and the faces that cannot do it alone. */
export function WaysToWork({ plans, ...rest }: WaysToWorkProps) {
  const { part } = rest;
  const { units } = shop.value;
  const [order, setOrder] = useState<WayOrder>('stock');
  const { first, others, stopped } = waysOf(plans, order);
  const areAllFixed = rest.answer.findings.every(({ fixed }) => fixed);
  const stops = (plan: Plan) =>
    plan.stops.map((stop) => stopInWords(stop, part.block.size, units)).join('; ');
  return (
    <>
      {rest.onLog !== undefined && first.steps.length > 0 && (
        <KeyboardWay to="[data-leads-on]" name="To where the work begins" />
      )}
      {others.length > 0 && (
        <Choice
          name="plan-order"
          legend="Which way first"
          options={ORDERS}
          chosen={order}
          onChoose={setOrder}
        />
      )}
      <h3>{first.possible ? planName(first) : 'Nothing that may be worked brings it right'}</h3>
      {first.possible ? (
        <p class="soft small">
          Brings each requirement{areAllFixed ? '' : ' that the readings fix'} to {typedShare.value}
          &nbsp;% of what the drawing allows, its doubt included.
        </p>
      ) : (
        <div class="note note-warning">
          <p>{stops(first)}.</p>
          {plans.releases.length > 0 && <p>{releasesInWords(plans.releases)}</p>}
          {first.steps.length > 0 && <p>This comes nearest:</p>}
        </div>
      )}
      {first.steps.length > 0 && <PlanSheet plan={first} {...rest} />}
      {others.map((plan) => (
        <Fold
          key={plan.faces.join()}
          summary={`Or ${planName(plan).toLowerCase()}${plan.steps.length > 1 ? '' : ' only'}: ${volumeInWords(plan.volume, units.size)}`}
        >
          <PlanSheet plan={plan} {...rest} />
        </Fold>
      ))}
      {first.possible && stopped.length > 0 && (
        <Fold summary="Faces that cannot do it alone">
          <ul class="effects small">
            {stopped.map((plan) => (
              <li key={plan.faces.join()}>
                Only the {plan.faces.join()}: {stops(plan)}
              </li>
            ))}
          </ul>
        </Fold>
      )}
      <section class="sheet" aria-label="Cautions">
        <Cautions />
      </section>
    </>
  );
}
