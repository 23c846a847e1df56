import { isPending } from '../../core/inspection/any-finding';
import type { FlatnessFinding } from '../../core/inspection/flatness';
import { namesWithSign } from '../../entry/reading-names';
import { shop } from '../../state/shop';
import type { InspectionRecord } from '../../store/records';
import { flattenInWords } from '../../words/flatness';

interface FlattenNotesProps {
  readonly flatness: readonly FlatnessFinding[];
  readonly inspection: InspectionRecord;
}

/** Faces that are not flat enough: no wedge mends that. Nothing where all that were mapped are in. */
export function FlattenNotes({ flatness, inspection }: FlattenNotesProps) {
  const { deviation } = shop.value.units;
  const names = namesWithSign(inspection.setups);
  return (
    <>
      {flatness.map((finding) => {
        if (!finding.fixed || finding.verdict === 'in' || isPending(finding)) return null;
        const high = finding.high.map((reading) => names.get(reading) ?? 'a place');
        return (
          <p key={finding.requirement.id} class="note note-warning">
            {flattenInWords(finding, high, deviation)}
          </p>
        );
      })}
    </>
  );
}
