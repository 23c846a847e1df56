import { allFindings, isPending } from '../../core/inspection/any-finding';
import { foundOf } from '../../core/inspection/found';
import { workOut } from '../../state/answers';
import { shop } from '../../state/shop';
import type { InspectionRecord, PartRecord } from '../../store/records';
import { VerdictBadge } from '../../widgets/verdict-badge';
import { requirementName } from '../../words/faces';
import { foundInWords } from '../../words/numbers';
import { moment } from '../../words/time';
import { to } from '../paths';
import { EarlierVersions } from './earlier-versions';

interface InspectionLinkProps {
  readonly part: PartRecord;
  readonly inspection: InspectionRecord;
}

/** One inspection in a part's story: what it found. */
export function InspectionLink({ part, inspection }: InspectionLinkProps) {
  const { answer } = workOut(inspection, part.entry);
  const { deviation } = shop.value.units;
  const findings = allFindings(answer);
  return (
    <article class="sheet">
      <div class="sheet-head">
        <h3>{inspection.closed === undefined ? 'Readings, still open' : 'Readings'}</h3>
        <div class="row">
          <a class="button" href={to.record(part.id, inspection.id)}>
            Record
          </a>
          <a class="button" href={to.plate(part.id, inspection.id)}>
            Show
          </a>
        </div>
      </div>
      <p class="soft small">{moment(inspection.made)}</p>
      {findings.map((finding) => (
        <div key={finding.requirement.id} class="sheet-head">
          <span>
            {requirementName(finding.requirement)}:{' '}
            {finding.fixed ? foundInWords(foundOf(finding), deviation) : 'not fixed'}
          </span>
          {finding.fixed && !isPending(finding) && <VerdictBadge verdict={finding.verdict} />}
        </div>
      ))}
      {answer === undefined && <p class="soft">No answer yet.</p>}
      <EarlierVersions part={part} inspection={inspection} />
    </article>
  );
}
