import { adjust } from '../adjustment/adjustment';
import type { Part } from '../part/part';
import type { Requirement } from '../part/requirement';
import type { Equation } from '../readings/equation';
import { equationsOf } from '../readings/equations-of';
import type { Kit } from '../readings/kit';
import type { Reading } from '../readings/reading';
import { sitReading } from '../readings/unknowns';
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
  const equations = equationsOf(readings, part.block, kit);
  const repeated = repeatedBySeating(readings);
  const settles = (times: number): boolean => {
    const then = zoneOfRequirement(
      requirement,
      part.block,
      adjust(equations.map((one) => (repeated.has(one.reading) ? readAgain(one, times) : one))),
    );
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

/** What a lift of the block would have read once more, and how it sat. */
function repeatedBySeating(readings: readonly Reading[]): ReadonlySet<string> {
  return new Set(
    readings.flatMap((reading) => {
      if (reading.kind === 'nose comparator') return [reading.id];
      if (reading.kind !== 'column' && reading.kind !== 'over the top') return [];
      return [reading.id, sitReading(reading.placing)];
    }),
  );
}

/** An equation read `times` more, with the same outcome: their mean weighs as much as all of them. */
function readAgain(equation: Equation, times: number): Equation {
  const narrower = Math.sqrt(times + 1);
  const components = equation.components.map((component) => ({
    ...component,
    standard: component.standard / narrower,
  }));
  return { ...equation, components };
}
