import type { Finding } from '../../core/inspection/findings';
import type { PartEntry } from '../../entry/part-entry';
import { shop } from '../../state/shop';
import type { InspectionRecord } from '../../store/records';
import { RequirementFrame } from '../../widgets/requirement-frame';
import { VerdictBadge } from '../../widgets/verdict-badge';
import { withDoubt } from '../../words/numbers';
import { verdictInWords } from '../../words/verdicts';
import { AssumptionWarning } from './assumption-warning';
import { NotFixed } from './not-fixed';

interface FindingSheetProps {
  readonly finding: Finding;
  readonly entry: PartEntry;
  readonly inspection: InspectionRecord;
}

/** One requirement: what was found, and whether the drawing is met. */
export function FindingSheet({ finding, entry, inspection }: FindingSheetProps) {
  const { requirement } = finding;
  const typed = entry.requirements.find(({ id }) => id === requirement.id)?.tolerance;
  const { deviation } = shop.value.units;
  return (
    <section class="sheet">
      <div class="sheet-head">
        <RequirementFrame
          face={requirement.face}
          datum={requirement.datum}
          tolerance={typed === undefined ? '' : `${typed.text.trim()} ${typed.unit}`}
          datumA={entry.datum}
        />
        {finding.fixed && <VerdictBadge verdict={finding.verdict} />}
      </div>
      {finding.fixed ? (
        <>
          <p class="big-number">
            {withDoubt(finding.zone.width, finding.zone.standard, deviation)}
          </p>
          <p>{verdictInWords(finding)}</p>
          {finding.assumed && <AssumptionWarning />}
        </>
      ) : (
        <NotFixed remedies={finding.remedies} requirement={requirement} inspection={inspection} />
      )}
    </section>
  );
}
