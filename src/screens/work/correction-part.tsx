import { useLocation } from 'preact-iso';
import type { PlanStep } from '../../core/correction/plan/plan';
import { adviceOn, share } from '../../state/advice';
import type { Worked } from '../../state/answers';
import { usualWay } from '../../state/learning';
import { beginWork } from '../../state/work-log';
import type { InspectionRecord, PartRecord } from '../../store/records';
import { useBeginReadings } from '../begin-readings';
import { useGatheredFinds } from '../gathered-finds';
import { to } from '../paths';
import { Advice, NothingMeasured } from './advice';
import { FlattenNotes } from './flatten-notes';

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
  useGatheredFinds();
  const log = (step: PlanStep) =>
    route(to.work(part.id, beginWork(inspection, part.entry, step.removal).id));
  return (
    <>
      <h2 tabIndex={-1}>What to take off</h2>
      {answer !== undefined && <FlattenNotes flatness={answer.flatness} inspection={inspection} />}
      {share.value === undefined ? (
        <p class="note note-wrong">
          How far a plan is to go is no share of the tolerance.{' '}
          <a href={to.kit(to.plate(part.id, inspection.id))}>Put it right</a>
        </p>
      ) : answer === undefined || read === undefined || plans === undefined ? (
        <NothingMeasured />
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
