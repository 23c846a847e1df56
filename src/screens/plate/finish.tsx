import { useLayoutEffect, useRef } from 'preact/hooks';
import { closeInspection } from '../../state/inspections';
import { askToKeep } from '../../state/keeping';
import { setWho, who } from '../../state/shop-settings';
import type { InspectionRecord, PartRecord } from '../../store/records';
import { isFocusNowhere } from '../../widgets/arrival';
import { TextField } from '../../widgets/text-field';
import { to } from '../paths';
import { OpenAgain } from './open-again';

/** Names the button in the page. */
export const FINISH = 'finish';

interface FinishProps {
  readonly part: PartRecord;
  readonly inspection: InspectionRecord;
  /** False as long as there is no answer. */
  readonly canFinish: boolean;
}

/** Readings are finished by whoever measured; once they are, where their record is and how to open them again. */
export function Finish({ part, inspection, canFinish }: FinishProps) {
  const record = useRef<HTMLAnchorElement>(null);
  const isClosed = inspection.closed !== undefined;
  const pressed = useRef(false);
  // The button that finishes goes with the focus on it: one goes on with the record. Work that is begun finishes
  // them, too: then another screen is on its way, and the page must not be scrolled here.
  useLayoutEffect(() => {
    if (isClosed && pressed.current && isFocusNowhere()) record.current?.focus();
    pressed.current = false;
  }, [isClosed]);
  if (isClosed) {
    return (
      <div class="note">
        Finished.{' '}
        <a ref={record} href={to.record(part.id, inspection.id)}>
          Record of these readings
        </a>{' '}
        {part.closed === undefined ? (
          <OpenAgain inspection={inspection} />
        ) : (
          <p>
            The part is closed. To put a slip right, <a href={to.part(part.id)}>take it up again</a>{' '}
            first.
          </p>
        )}
      </div>
    );
  }
  const finish = () => {
    pressed.current = true;
    closeInspection(inspection, part.entry);
    // From now on there is something to lose.
    void askToKeep();
  };
  return (
    <>
      <TextField id="who" label="Measured by" text={who.value} onText={setWho} />
      <button
        id={FINISH}
        type="button"
        class="button"
        data-leads-on
        disabled={!canFinish}
        onClick={finish}
      >
        Finish these readings
      </button>
      {!canFinish && (
        <p class="soft small">They can be finished as soon as they say anything of the part.</p>
      )}
    </>
  );
}
