import { useState } from 'preact/hooks';
import { useLocation } from 'preact-iso';
import { byTime } from '../../core/correction/plan/order';
import type { Plan, PlanStep } from '../../core/correction/plan/plan';
import type { Plans } from '../../core/correction/plan/plans-for';
import type { InspectionAnswer } from '../../core/inspection/inspect';
import type { Part } from '../../core/part/part';
import type { WayOfWorking } from '../../entry/way-of-working';
import { adviceOn, share, typedShare } from '../../state/advice';
import type { Worked } from '../../state/answers';
import { usualWay } from '../../state/learning';
import { shop } from '../../state/shop';
import { beginWork } from '../../state/work-log';
import type { InspectionRecord, PartRecord } from '../../store/records';
import { Choice } from '../../widgets/choice';
import { Fold } from '../../widgets/fold';
import { isWithinDoubt } from '../../words/leans';
import { planName, releasesInWords, stopInWords, volumeInWords } from '../../words/plans';
import { useBeginReadings } from '../begin-readings';
import { useGatheredPasses } from '../gathered-passes';
import { to } from '../paths';
import { Cautions } from './cautions';
import { FlattenNotes } from './flatten-notes';
import { PlanSheet } from './plan-sheet';

interface CorrectionPartProps {
  readonly part: PartRecord;
  readonly inspection: InspectionRecord;
  readonly worked: Worked;
  /** True where nothing has been read or done since. */
  readonly isLast: boolean;
}

/** What to take off to bring in all that has been measured. */
export function CorrectionPart({ part, inspection, worked, isLast }: CorrectionPartProps) {
  const { route } = useLocation();
  const again = useBeginReadings(part);
  const { answer, part: read } = worked;
  const plans = adviceOn(worked)?.plans;
  useGatheredPasses();
  const log = (step: PlanStep) =>
    route(to.work(part.id, beginWork(inspection, part.entry, step.removal).id));
  return (
    <>
      <h2>What to take off</h2>
      {answer !== undefined && <FlattenNotes flatness={answer.flatness} inspection={inspection} />}
      {share.value === undefined ? (
        <p class="note note-wrong">
          How far a plan is to go is no share of the tolerance.{' '}
          <a href={to.kit(to.plate(part.id, inspection.id))}>Put it right</a>
        </p>
      ) : answer === undefined || read === undefined || plans === undefined ? (
        <p class="note">Nothing to advise until a requirement of the drawing has been measured.</p>
      ) : (
        <Advice
          part={read}
          answer={answer}
          plans={plans}
          way={usualWay(part)}
          onLog={isLast ? log : undefined}
        />
      )}
      {isLast && inspection.closed !== undefined && (
        <button type="button" class="button" onClick={again}>
          Measure again
        </button>
      )}
    </>
  );
}

interface AdviceProps {
  readonly part: Part;
  readonly answer: InspectionAnswer;
  readonly plans: Plans;
  /** How it would be lapped. */
  readonly way: WayOfWorking;
  readonly onLog: ((step: PlanStep) => void) | undefined;
}

function Advice(props: AdviceProps) {
  const { answer, plans } = props;
  const measured = answer.findings.flatMap((finding) => (finding.fixed ? [finding] : []));
  const { best } = plans;
  const mapped = answer.flatness.flatMap((finding) => (finding.fixed ? [finding] : []));
  const areFlat = mapped.every(({ verdict }) => verdict === 'in');
  if (measured.length === 0 && mapped.length > 0) {
    return areFlat ? <p class="note">All that has been measured is in: leave it.</p> : null;
  }
  if (measured.length === 0) {
    return (
      <p class="note">Nothing to advise until a requirement of the drawing has been measured.</p>
    );
  }
  if (best.possible && best.steps.length === 0) {
    return (
      <p class="note">
        {areFlat ? 'Nothing: all' : 'No wedge: all else'} that has been measured is within{' '}
        {typedShare.value} % of what the drawing allows, its doubt included.
      </p>
    );
  }
  const allIn = measured.every(({ verdict }) => verdict === 'in');
  const doubtful = measured
    .filter(({ verdict }) => verdict !== 'in')
    .every(({ zone }) => zone.parts.every((each) => isWithinDoubt({ ...zone, ...each })));
  const advice = (
    <Ways
      {...props}
      // Nothing is urgent where all is in, and nothing is sure where the doubt is larger than the error.
      tentative={allIn || doubtful || measured.every(({ verdict }) => verdict !== 'out')}
    />
  );
  if (allIn) {
    return (
      <>
        <p class="note">{areFlat ? 'All' : 'All else'} that has been measured is in: leave it.</p>
        <Fold summary="To bring it closer all the same">
          <div class="stack">{advice}</div>
        </Fold>
      </>
    );
  }
  return (
    <>
      {doubtful && (
        <p class="note note-warning">
          The error is smaller than its doubt, so which edge is high is not sure. Read again before
          anything comes off.
        </p>
      )}
      {advice}
    </>
  );
}

const ORDERS = [
  ['stock', 'Least stock'],
  ['time', 'Least time'],
] as const;

/** The best plan in full, the others folded away, and the faces that cannot do it alone. */
function Ways({ plans, ...rest }: AdviceProps & { readonly tentative: boolean }) {
  const { part } = rest;
  const { units } = shop.value;
  const [order, setOrder] = useState<'stock' | 'time'>('stock');
  const { first, others, stopped } = orderedWays(plans, order);
  const stops = (plan: Plan) =>
    plan.stops.map((stop) => stopInWords(stop, part.block.size, units)).join('; ');
  return (
    <>
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
          Brings each requirement to {typedShare.value} % of what the drawing allows, its doubt
          included.
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
          summary={`Or ${planName(plan).toLowerCase()} only: ${volumeInWords(plan.volume)}`}
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

/** The plan to show first, the others that do it, and those that do not. */
function orderedWays({ best, single }: Plans, order: 'stock' | 'time') {
  const bestIsSingle = best.steps.length < 2;
  const possible = single.filter((plan) => plan.possible);
  const all = bestIsSingle && possible.length > 0 ? possible : [best, ...possible];
  // All faces are worked the same way, so the time goes with the wedge.
  const [first = best, ...others] = order === 'time' ? byTime(all, ({ wedge }) => wedge) : all;
  return {
    first,
    others,
    stopped: single.filter((plan) => !plan.possible),
  };
}
