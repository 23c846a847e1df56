import { stepsBack } from '../../state/undo';
import type { InspectionRecord } from '../../store/records';

interface UndoButtonProps {
  readonly inspection: InspectionRecord;
  readonly onTakeBack: () => void;
}

/** Takes the last change back, while there is one and the readings are open. */
export function UndoButton({ inspection, onTakeBack }: UndoButtonProps) {
  if (inspection.closed !== undefined) return null;
  return (
    <button
      type="button"
      class="button button-quiet"
      disabled={stepsBack(inspection) === 0}
      onClick={onTakeBack}
    >
      Undo
    </button>
  );
}
