import type { Asked } from '../../core/part/requirement';
import { seatEachAgain, sidesToSeat } from '../../entry/seat-each-again';
import { changeSetups } from '../../state/plate-changes';
import { newId } from '../../state/shop';
import type { InspectionRecord } from '../../store/records';
import { focusNextToFill } from '../../widgets/number-fields';
import { sidesInWords } from '../../words/faces';

interface SeatEachAgainProps {
  readonly inspection: InspectionRecord;
  /** What the drawing asks and is to be known better; left out, all that the block stands for. */
  readonly asked?: Asked;
}

/** A field more for each side, and the way to the first of them: where the advice is to lift and read again. */
export function SeatEachAgain({ inspection, asked }: SeatEachAgainProps) {
  const { setups } = inspection;
  const sides = asked && sidesToSeat(setups, asked);
  const add = () => {
    // They may be there already.
    if (seatEachAgain(setups, newId, asked) === setups) focusNextToFill(null);
    else changeSetups(inspection, (now) => seatEachAgain(now, newId, asked));
  };
  return (
    <button type="button" class="button" onClick={add}>
      Seat {sidesInWords(sides)} again
    </button>
  );
}
