import { allFindings, isPending } from '../../core/inspection/any-finding';
import { foundOf } from '../../core/inspection/found';
import { workOut } from '../../state/answers';
import { shop } from '../../state/shop';
import type { InspectionRecord, PartRecord } from '../../store/records';
import { Found } from '../../widgets/found';
import { standsInWords } from '../../words/verdicts';
import { AskedFrame } from './asked-frame';

interface WhereItStandsProps {
  readonly part: PartRecord;
  readonly inspection: InspectionRecord;
}

/** What readings say of every requirement, at a glance. */
export function WhereItStands({ part, inspection }: WhereItStandsProps) {
  const { answer } = workOut(inspection, part.entry);
  const entry = inspection.closed?.part ?? part.entry;
  const { deviation } = shop.value.units;
  if (answer === undefined) return <p>No answer yet.</p>;
  const findings = allFindings(answer);
  return (
    <div class="stack">
      <p>
        <b>{standsInWords(findings)}</b>
      </p>
      {findings.map((finding) => (
        <div key={finding.requirement.id} class="standing">
          <AskedFrame requirement={finding.requirement} entry={entry} />
          {finding.fixed ? (
            <Found
              {...foundOf(finding)}
              unit={deviation}
              verdict={isPending(finding) ? undefined : finding.verdict}
            />
          ) : (
            <p class="soft">Not fixed by the readings.</p>
          )}
        </div>
      ))}
    </div>
  );
}
