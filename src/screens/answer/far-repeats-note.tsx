import type { FarRepeats } from '../../core/readings/repeats';
import { readingNames } from '../../entry/reading-names';
import { shop } from '../../state/shop';
import type { InspectionRecord } from '../../store/records';
import { farRepeatsInWords } from '../../words/checks';
import { ReadingNote } from './reading-note';

interface FarRepeatsNoteProps {
  readonly far: FarRepeats;
  readonly inspection: InspectionRecord;
}

/** Why the ± is so wide, where repeats are further apart than the seating explains, and what to do. */
export function FarRepeatsNote({ far, inspection }: FarRepeatsNoteProps) {
  const [one, other] = far.readings;
  const names = readingNames(inspection.setups);
  const nameOf = (reading: string) => names.get(reading) ?? 'A reading';
  return (
    <ReadingNote inspection={inspection} reading={other} name={nameOf(other)}>
      {farRepeatsInWords([nameOf(one), nameOf(other)], far.apart, shop.value.units.deviation)}
    </ReadingNote>
  );
}
