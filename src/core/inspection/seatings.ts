import { adjust } from '../adjustment/adjustment';
import type { Part } from '../part/part';
import type { Requirement } from '../part/requirement';
import { equationsOf } from '../readings/equations-of';
import type { Kit } from '../readings/kit';
import type { Reading } from '../readings/reading';
import { decide } from '../verdict/conformity';
import { probabilityOfConformity } from '../verdict/probability';
import type { Zone } from '../zones/zone';
import { zoneOfRequirement } from '../zones/zone-of-requirement';

/** More than this at the plate is a day lost: another way of reading is called for. */
const MOST = 20;

/**
 * How many times more each side has to be seated and read, everything else as it is, before the
 * verdict on `requirement` is likely to be in or out: the least number for which it would be, were
 * the readings to agree with those there are. Undefined where up to 20 do not settle it.
 */
export function seatingsToSettle(
  requirement: Requirement,
  zone: Zone,
  part: Part,
  readings: readonly Reading[],
  kit: Kit,
  level: number,
): number | undefined {
  const settles = (times: number): boolean => {
    const more = Array.from({ length: times }, (_, again) => seatedAgain(readings, again)).flat();
    const equations = equationsOf([...readings, ...more], part.block, kit);
    const then = zoneOfRequirement(requirement, part.block, adjust(equations));
    if (then === undefined) return false;
    // The value stays the one that was found: what further readings will say is not known.
    const parts = zone.parts.map(({ value }, index) => ({ ...then.parts[index]!, value }));
    const probability = probabilityOfConformity({ ...then, parts }, requirement.tolerance);
    return decide(probability, level) !== 'too close to call';
  };
  if (!settles(MOST)) return undefined;
  let [not, yes] = [0, MOST];
  while (yes - not > 1) {
    const middle = Math.floor((not + yes) / 2);
    if (settles(middle)) yes = middle;
    else not = middle;
  }
  return yes;
}

/** Every reading that a lift of the block would repeat, once more. */
function seatedAgain(readings: readonly Reading[], again: number): readonly Reading[] {
  return readings.flatMap((reading): readonly Reading[] => {
    const id = `${reading.id} again ${again}`;
    switch (reading.kind) {
      case 'nose comparator':
        return [{ ...reading, id }];
      case 'column':
      case 'over the top':
        return [{ ...reading, id, placing: `${reading.placing} again ${again}` }];
      default:
        return [];
    }
  });
}
