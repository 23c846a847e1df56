import type { ComponentChildren } from 'preact';
import { useLocation } from 'preact-iso';
import type { CorrectionOption } from '../../core/correction/options';
import type { Finding } from '../../core/inspection/findings';
import type { Part } from '../../core/part/part';
import type { Worked } from '../../state/answers';
import { beginWork } from '../../state/chain';
import type { InspectionRecord, PartRecord } from '../../store/records';
import { Fold } from '../../widgets/fold';
import { VerdictBadge } from '../../widgets/verdict-badge';
import { requirementName } from '../../words/faces';
import { isWithinDoubt } from '../../words/leans';
import { useBeginReadings } from '../begin-readings';
import { to } from '../paths';
import { Cautions } from './cautions';
import { OptionSheet } from './option-sheet';

interface CorrectionPartProps {
  readonly part: PartRecord;
  readonly inspection: InspectionRecord;
  readonly worked: Worked;
  /** True where nothing has been read or done since. */
  readonly isLast: boolean;
}

/** What to take off, for each requirement that has been measured. */
export function CorrectionPart({ part, inspection, worked, isLast }: CorrectionPartProps) {
  const { route } = useLocation();
  const { answer, part: read } = worked;
  const measured = (answer?.findings ?? []).filter(isFixed);
  const log = (option: CorrectionOption) => {
    const work = beginWork(inspection, part.entry, {
      requirement: option.requirement.id,
      face: option.face,
      advised: option.wedge,
    });
    route(to.work(part.id, work.id));
  };
  const again = useBeginReadings(part);
  return (
    <>
      <h2>What to take off</h2>
      {measured.length === 0 && (
        <p class="note">Nothing to advise until a requirement of the drawing has been measured.</p>
      )}
      {read !== undefined &&
        measured.map((finding, index) => (
          <Target key={finding.requirement.id} finding={finding}>
            <Options
              options={answer?.corrections[index] ?? []}
              part={read}
              onLog={isLast ? log : undefined}
              tentative={finding.verdict !== 'out'}
            />
          </Target>
        ))}
      {measured.length > 0 && (
        <section class="sheet" aria-label="Cautions">
          <Cautions />
        </section>
      )}
      {isLast && inspection.closed !== undefined && (
        <button type="button" class="button" onClick={again}>
          Measure again
        </button>
      )}
    </>
  );
}

type FixedFinding = Extract<Finding, { fixed: true }>;

function isFixed(finding: Finding): finding is FixedFinding {
  return finding.fixed;
}

interface OptionsProps {
  readonly options: readonly CorrectionOption[];
  readonly part: Part;
  readonly onLog: ((option: CorrectionOption) => void) | undefined;
  readonly tentative: boolean;
}

/** The way that takes least stock in full, the others folded away. */
function Options({ options, part, onLog, tentative }: OptionsProps) {
  const [first, ...others] = options;
  if (first === undefined) return <p class="note">There is no error to take off.</p>;
  return (
    <>
      <OptionSheet option={first} part={part} onLog={onLog} tentative={tentative} />
      {others.map((option) => (
        <Fold key={option.face} summary={`Or work the ${option.face}`}>
          <OptionSheet option={option} part={part} onLog={onLog} tentative={tentative} />
        </Fold>
      ))}
    </>
  );
}

interface TargetProps {
  readonly finding: FixedFinding;
  readonly children: ComponentChildren;
}

/** One requirement with the ways to put it right; folded away where it is met already. */
function Target({ finding, children }: TargetProps) {
  const { requirement, zone, verdict } = finding;
  const doubtful = zone.parts.every((part) => isWithinDoubt({ ...zone, ...part }));
  const advice = (
    <>
      {doubtful && (
        <p class="note note-warning">
          The error is smaller than its doubt, so which edge is high is not sure. Read again before
          anything comes off.
        </p>
      )}
      {children}
    </>
  );
  return (
    <section class="stack" aria-label={`To put right: ${requirementName(requirement)}`}>
      <div class="sheet-head">
        <h3>{requirementName(requirement)}</h3>
        <VerdictBadge verdict={verdict} />
      </div>
      {verdict === 'in' ? (
        <Fold summary="It is in: leave it. To bring it closer all the same">
          <div class="stack">{advice}</div>
        </Fold>
      ) : (
        advice
      )}
    </section>
  );
}
