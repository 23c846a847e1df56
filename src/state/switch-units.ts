import { partInUnit, setupInUnits } from '../entry/in-units';
import type { InspectionRecord, PartRecord, ShopUnits } from '../store/records';
import { convertSetups } from './plate-changes';
import { putPart } from './shop';
import { entryUnits, setUnits } from './shop-settings';

/** Takes up other units, and puts what is typed on the screen into them: the part, and readings that are still open. */
export function switchUnits(
  units: ShopUnits,
  part?: PartRecord,
  inspection?: InspectionRecord,
): void {
  setUnits(units);
  if (part !== undefined) putPart({ ...part, entry: partInUnit(part.entry, units.size) });
  if (inspection !== undefined && inspection.closed === undefined) {
    convertSetups(inspection, (setups) =>
      setups.map((setup) => setupInUnits(setup, entryUnits.value)),
    );
  }
}
