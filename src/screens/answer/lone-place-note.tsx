import type { FixedFlatness } from '../../core/inspection/flatness';
import { fieldOfReading } from '../../entry/field-of-reading';
import { readingNames } from '../../entry/reading-names';
import { shop } from '../../state/shop';
import type { InspectionRecord } from '../../store/records';
import { goToField } from '../../widgets/number-fields';
import { loneInWords } from '../../words/flatness';

interface LonePlaceNoteProps {
  readonly finding: FixedFlatness;
  readonly inspection: InspectionRecord;
}

/** Asks about the one place that stands off where all others lie flat, and leads to it. */
export function LonePlaceNote({ finding, inspection }: LonePlaceNoteProps) {
  const { lone, places } = finding;
  if (lone === undefined) return null;
  const { setups, closed } = inspection;
  const name = readingNames(setups).get(lone.reading) ?? 'One place';
  const field = fieldOfReading(setups, lone.reading);
  return (
    <div class="note note-warning stack">
      <p>{loneInWords(name, places - 1, lone.without, shop.value.units.deviation)}</p>
      {closed === undefined && field !== undefined && (
        <button type="button" class="button" onClick={() => goToField(field)}>
          Go to {name}
        </button>
      )}
    </div>
  );
}
