import type { ComponentChildren } from 'preact';
import { fieldOfReading } from '../../entry/field-of-reading';
import type { InspectionRecord } from '../../store/records';
import { goToField } from '../../widgets/number-fields';

interface ReadingNoteProps {
  readonly inspection: InspectionRecord;
  /** The reading that is asked about, and its name. */
  readonly reading: string;
  readonly name: string;
  readonly children: ComponentChildren;
}

/** Says what is odd about a reading, and leads to its field while it can be put right. */
export function ReadingNote({ inspection, reading, name, children }: ReadingNoteProps) {
  const field = fieldOfReading(inspection.setups, reading);
  return (
    <div class="note note-warning stack">
      <p>{children}</p>
      {inspection.closed === undefined && field !== undefined && (
        <button type="button" class="button" onClick={() => goToField(field)}>
          Go to {name}
        </button>
      )}
    </div>
  );
}
