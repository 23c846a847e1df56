import type { ComponentChildren } from 'preact';
import { isReadOnce, isUnread } from '../../entry/read-once';
import { dismiss } from '../../state/plate-changes';
import type { InspectionRecord } from '../../store/records';

/** What matters at this level, where it matters: gone with a tap, or once it is past. */
interface ReminderProps {
  readonly inspection: InspectionRecord;
}

/** Before the first reading: clean, no burrs, one temperature. */
export function BeforeReading({ inspection }: ReminderProps) {
  if (!isUnread(inspection.setups)) return null;
  return (
    <Reminder inspection={inspection} name="before reading">
      Stone the burrs off, wipe block and plate clean, and let the block soak to the temperature of
      the plate: longer where it has just been worked or held.
    </Reminder>
  );
}

/** After one reading of each side: a speck of dust shows only where the block is seated again. */
export function SeatAgain({ inspection }: ReminderProps) {
  if (!isReadOnce(inspection.setups)) return null;
  return (
    <Reminder inspection={inspection} name="seat again">
      Each side has been read once: dust under the block would not show. Lift it, wipe, and seat it
      again for another reading.
    </Reminder>
  );
}

interface NamedReminderProps extends ReminderProps {
  readonly name: string;
  readonly children: ComponentChildren;
}

function Reminder({ inspection, name, children }: NamedReminderProps) {
  if (inspection.closed !== undefined || inspection.dismissed?.includes(name)) return null;
  return (
    <div class="note reminder">
      <p class="small">
        {children} <span class="soft">Common practice, no source.</span>
      </p>
      <button
        type="button"
        class="button button-quiet"
        aria-label={`Do not remind: ${name}`}
        onClick={() => dismiss(inspection, name)}
      >
        Done
      </button>
    </div>
  );
}
