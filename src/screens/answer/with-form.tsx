import { expanded } from '../../core/statistics/coverage';
import { shop } from '../../state/shop';
import type { FixedFinding } from '../../state/zone-form/questions';
import { spansInWords, withFormInWords } from '../../words/form';
import { withDoubt } from '../../words/numbers';

interface WithFormProps {
  readonly finding: FixedFinding;
}

/** The same zone with the form that the readings show, and the verdict's chance. */
export function WithForm({ finding }: WithFormProps) {
  const { deviation, size } = shop.value.units;
  const { zone } = finding;
  const formed = finding.withForm && { ...finding.withForm, verdict: finding.verdict };
  const spans = spansInWords(finding.formSpans, size);
  return (
    <>
      <p>{withFormInWords(finding.formPoints.length, formed, deviation)}</p>
      {finding.withForm !== undefined && (
        <p class="soft small">
          Its plane by itself: {withDoubt(zone.width, expanded(zone), deviation)}.
        </p>
      )}
      {spans !== undefined && <p class="soft small">{spans}</p>}
    </>
  );
}
