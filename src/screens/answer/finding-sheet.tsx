import type { Finding } from '../../core/inspection/findings';
import { expanded } from '../../core/statistics/coverage';
import type { PartEntry } from '../../entry/part-entry';
import type { Worked } from '../../state/answers';
import { shop } from '../../state/shop';
import { awaitsForm } from '../../state/zone-form/questions';
import type { InspectionRecord } from '../../store/records';
import { ZoneScale } from '../../widgets/drawings/zone-scale';
import { Found } from '../../widgets/found';
import { Later } from '../../widgets/later';
import { RequirementFrame } from '../../widgets/requirement-frame';
import { deviation as shown } from '../../words/numbers';
import { seatingsInWords, verdictInWords } from '../../words/verdicts';
import { AssumptionWarning } from './assumption-warning';
import { Chance } from './chance';
import { NextLine } from './next-line';
import { NotFixed } from './not-fixed';
import { WithForm } from './with-form';
import { Working } from './working';

interface FindingSheetProps {
  readonly finding: Finding;
  readonly entry: PartEntry;
  readonly inspection: InspectionRecord;
  readonly worked: Worked;
}

/** One requirement: what was found, and whether the drawing is met. */
export function FindingSheet({ finding, entry, inspection, worked }: FindingSheetProps) {
  const { requirement } = finding;
  const typed = entry.requirements.find(({ id }) => id === requirement.id)?.tolerance;
  const { deviation } = shop.value.units;
  const hasForm = finding.fixed && finding.formPoints.length > 0;
  return (
    <section class="sheet">
      <div class="sheet-head">
        <RequirementFrame
          face={requirement.face}
          datum={requirement.datum}
          tolerance={typed === undefined ? '' : `${typed.text.trim()} ${typed.unit}`}
          datumA={entry.datum}
        />
      </div>
      {finding.fixed ? (
        <>
          <Found
            value={finding.zone.width}
            expanded={expanded(finding.zone)}
            unit={deviation}
            verdict={awaitsForm(finding) ? undefined : finding.verdict}
          />
          {!hasForm && (
            <ZoneScale
              limit={requirement.tolerance}
              limitText={shown(requirement.tolerance, deviation)}
              value={finding.zone.width}
              expanded={expanded(finding.zone)}
              verdict={finding.verdict}
            />
          )}
          {hasForm ? <WithForm finding={finding} /> : <p>{verdictInWords(finding)}</p>}
          {finding.seatings !== undefined && <p>{seatingsInWords(finding.seatings)}</p>}
          {finding.assumed && <AssumptionWarning />}
          {inspection.closed === undefined && (
            <Later turns={1}>
              <NextLine
                worked={worked}
                requirement={requirement.id}
                degreesOfFreedom={finding.zone.degreesOfFreedom}
              />
            </Later>
          )}
          <Working
            result={{ ...finding.zone, value: finding.zone.width }}
            what="The width"
            inspection={inspection}
          >
            {finding.withForm === undefined && <Chance finding={finding} />}
          </Working>
        </>
      ) : (
        <NotFixed remedies={finding.remedies} requirement={requirement} inspection={inspection} />
      )}
    </section>
  );
}
