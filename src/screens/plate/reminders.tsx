import type { ComponentChildren } from 'preact';
import { useLayoutEffect, useRef } from 'preact/hooks';
import { isReadOnce, isUnread } from '../../entry/read-once';
import { dismiss } from '../../state/plate-changes';
import type { InspectionRecord, PartRecord } from '../../store/records';
import { focusNextToFill } from '../../widgets/number-fields';
import { SeatEachAgain } from './seat-each-again';

/** What matters at this level, where it matters: gone with a tap, or once it is past. */
interface ReminderProps {
  readonly inspection: InspectionRecord;
}

const BEFORE = 'before reading';

/** True while it is to be read before anything is typed: clean, no burrs, one temperature. */
export function remindsBefore(
  { example }: PartRecord,
  { setups, closed, dismissed }: InspectionRecord,
): boolean {
  return !example && closed === undefined && isUnread(setups) && !dismissed?.includes(BEFORE);
}

/** Before the first reading. Done with it, one goes on to the first field. */
export function BeforeReading({ part, inspection }: ReminderProps & { readonly part: PartRecord }) {
  const isShown = remindsBefore(part, inspection);
  const isDone = useRef(false);
  // With what is drawn: the fields move up as it goes.
  useLayoutEffect(() => {
    if (isDone.current && !isShown) focusNextToFill(null);
    isDone.current = false;
  }, [isShown]);
  if (!isShown) return null;
  return (
    <Reminder
      inspection={inspection}
      name={BEFORE}
      onDone={() => {
        isDone.current = true;
      }}
    >
      Stone the burrs off, wipe block and plate clean, and let the block soak to the temperature of
      the plate: longer where it has just been worked or held.
    </Reminder>
  );
}

/** After one reading of each side: a speck of dust shows only where the block is seated again. */
export function SeatAgain({ inspection }: ReminderProps) {
  if (!isReadOnce(inspection.setups)) return null;
  return (
    <Reminder
      inspection={inspection}
      name="seat again"
      way={<SeatEachAgain inspection={inspection} />}
    >
      Each side has been read once: dust under the block would not show. Lift it, wipe, and seat it
      again for another reading.
    </Reminder>
  );
}

interface NamedReminderProps extends ReminderProps {
  readonly name: string;
  /** The way to what is reminded of. */
  readonly way?: ComponentChildren;
  readonly children: ComponentChildren;
  readonly onDone?: () => void;
}

function Reminder({ inspection, name, way, children, onDone }: NamedReminderProps) {
  if (inspection.closed !== undefined || inspection.dismissed?.includes(name)) return null;
  return (
    <div class="note reminder">
      <div class="stack">
        <p class="small">
          {children} <span class="soft">Common practice, no source.</span>
        </p>
        {way}
      </div>
      <button
        type="button"
        class="button button-quiet"
        aria-label={`Done: ${name}`}
        onClick={() => {
          onDone?.();
          dismiss(inspection, name);
        }}
      >
        Done
      </button>
    </div>
  );
}
