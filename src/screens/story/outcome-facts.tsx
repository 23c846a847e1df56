import { expanded } from '../../core/statistics/coverage';
import type { WorkOutcome } from '../../state/outcomes';
import { shop } from '../../state/shop';
import type { WorkRecord } from '../../store/records';
import { BeforeAfter } from '../../widgets/drawings/before-after';
import { requirementName } from '../../words/faces';
import { deviation as shown, withDoubt } from '../../words/numbers';
import { rateInWords } from '../../words/work';

interface OutcomeFactsProps {
  readonly outcome: WorkOutcome;
  readonly work: WorkRecord;
}

/** Before and after side by side, what came off, and how fast. */
export function OutcomeFacts({ outcome, work }: OutcomeFactsProps) {
  const { before, after, outcome: done, rate } = outcome;
  const { deviation } = shop.value.units;
  const bars = [
    { name: 'Before', finding: before },
    { name: 'After', finding: after },
  ].map(({ name, finding }) => ({
    name,
    value: finding.zone.width,
    expanded: expanded(finding.zone),
    text: withDoubt(finding.zone.width, expanded(finding.zone), deviation),
    verdict: finding.verdict,
  }));
  return (
    <>
      <BeforeAfter
        limit={before.requirement.tolerance}
        limitText={shown(before.requirement.tolerance, deviation)}
        items={bars}
        label={`${requirementName(before.requirement)}: before ${bars[0]?.text}, after ${bars[1]?.text}`}
      />
      <dl class="facts">
        <dt>Wedge that came off</dt>
        <dd>{withDoubt(done.wedge, expanded(done), deviation)}</dd>
        {rate !== undefined && (
          <>
            <dt>Rate</dt>
            <dd>{rateInWords(rate, work.amount.unit, deviation)}</dd>
          </>
        )}
      </dl>
    </>
  );
}
