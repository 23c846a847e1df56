import type { FarRepeats } from '../../core/readings/repeats';
import { fieldOfReading } from '../../entry/field-of-reading';
import { readingNames } from '../../entry/reading-names';
import { shop } from '../../state/shop';
import type { InspectionRecord } from '../../store/records';
import { goToField } from '../../widgets/number-fields';
import { farRepeatsInWords } from '../../words/checks';

interface FarRepeatsNoteProps {
  readonly far: FarRepeats;
  readonly inspection: InspectionRecord;
}

/** Why the ± is so wide, where repeats are further apart than the seating explains, and what to do. */
export function FarRepeatsNote({ far, inspection }: FarRepeatsNoteProps) {
  const { setups, closed } = inspection;
  const [one, other] = far.readings;
  const names = readingNames(setups);
  const nameOf = (reading: string) => names.get(reading) ?? 'A reading';
  const field = fieldOfReading(setups, other);
  return (
    <div class="note note-warning stack">
      <p>
        {farRepeatsInWords([nameOf(one), nameOf(other)], far.apart, shop.value.units.deviation)}
      </p>
      {closed === undefined && field !== undefined && (
        <button type="button" class="button" onClick={() => goToField(field)}>
          Go to {nameOf(other)}
        </button>
      )}
    </div>
  );
}
