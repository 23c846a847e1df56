import { sizeUnitOf } from '../core/units/length';
import { partInUnit, setupInUnits } from '../entry/in-units';
import type { InspectionRecord, PartRecord, ShopUnits } from '../store/records';
import { convertSetups } from './plate-changes';
import { putPart } from './shop';
import { entryUnits, setUnits } from './shop-settings';

/** What goes with sizes in the other system, as fine as it: a tenth for a µm. */
const COUNTERPARTS = { µm: 'tenths', mm: 'thou', tenths: 'µm', thou: 'mm' } as const;

/** The units with sizes in `size`; readings go along where both were of one system, for few read them mixed. */
export function unitsWithSize(units: ShopUnits, size: ShopUnits['size']): ShopUnits {
  const { deviation } = units;
  const matched = sizeUnitOf(deviation) === units.size;
  if (size === units.size || !matched) return { ...units, size };
  return { size, deviation: COUNTERPARTS[deviation] };
}

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
