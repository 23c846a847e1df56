import { heightsToTakeOver, withHeightsOf } from '../../entry/heights-of-another';
import { isComparatorUnset } from '../../entry/read-once';
import { shownIn } from '../../entry/read-with';
import type { SetupEntry } from '../../entry/setup-entry';
import { changeSetup, readWithColumn } from '../../state/plate-changes';
import { newId } from '../../state/shop';
import type { InspectionRecord } from '../../store/records';
import { goToField } from '../../widgets/number-fields';
import { pairName } from '../../words/faces';

interface SetUpOtherwiseProps {
  readonly inspection: InspectionRecord;
  readonly setup: SetupEntry;
}

/** While nothing is set: the heights of the pair before in one tap, and the way to the other instrument. */
export function SetUpOtherwise({ inspection, setup }: SetUpOtherwiseProps) {
  const other = heightsToTakeOver(setup, inspection.setups);
  const unset = isComparatorUnset(setup);
  const takeOver = () => {
    if (other === undefined) return;
    changeSetup(inspection, setup, (now) => withHeightsOf(now, other, newId));
    goToField(shownIn(setup)[0]?.key ?? '');
  };
  if (other === undefined && !unset) return null;
  return (
    <div class="row">
      {other !== undefined && (
        <button type="button" class="button" onClick={takeOver}>
          Heights as for {pairName(other.faces)}
        </button>
      )}
      {unset && (
        <button type="button" class="button" onClick={() => readWithColumn(inspection)}>
          I read with a column
        </button>
      )}
    </div>
  );
}
