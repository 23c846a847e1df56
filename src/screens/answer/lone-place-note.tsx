import type { FixedFlatness } from '../../core/inspection/flatness';
import { readingNames } from '../../entry/reading-names';
import { swappedAlone } from '../../entry/swapped-digits';
import { shop } from '../../state/shop';
import type { InspectionRecord } from '../../store/records';
import { loneInWords } from '../../words/flatness';
import { ReadingNote } from './reading-note';

interface LonePlaceNoteProps {
  readonly finding: FixedFlatness;
  readonly inspection: InspectionRecord;
}

/** Asks about the one place that stands off where all others lie flat, and leads to it. */
export function LonePlaceNote({ finding, inspection }: LonePlaceNoteProps) {
  const { lone, places } = finding;
  if (lone === undefined) return null;
  const { reading, without } = lone;
  const name = readingNames(inspection.setups).get(reading) ?? 'One place';
  return (
    <ReadingNote inspection={inspection} reading={reading} name={name}>
      {loneInWords(
        name,
        places - 1,
        without,
        shop.value.units.deviation,
        swappedAlone(inspection.setups, finding),
      )}
    </ReadingNote>
  );
}
