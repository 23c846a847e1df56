import { adjust } from '../adjustment/adjustment';
import type { Block } from '../part/block';
import type { Requirement } from '../part/requirement';
import type { Equation } from '../readings/equation';
import { equationsOf } from '../readings/equations-of';
import type { Kit } from '../readings/kit';
import type { Reading } from '../readings/reading';
import { sitReading } from '../readings/unknowns';
import { decide } from '../verdict/conformity';
import { probabilityOfConformity } from '../verdict/probability';
import type { KnownParts } from '../verdict/width-draws';
import { zoneOfRequirement } from '../zones/zone-of-requirement';
import { evidenceFor } from './evidence';

/** More than this at the plate is a day lost: another way of reading is called for. */
const MOST = 20;

/** How many more seatings of each side would settle a verdict; 'none' where up to 20 do not. */
export type Seatings = number | 'none';

/** A verdict that is too close to call, with all that it hangs on. */
export interface ToSettle {
  readonly requirement: Requirement;
  readonly zone: KnownParts;
  readonly block: Block;
  readonly readings: readonly Reading[];
  /** The kit as it was reckoned with. */
  readonly kit: Kit;
  readonly level: number;
}

/**
 * How many times more each side has to be seated and read, everything else as it is, before the
 * verdict is likely to be in or out: the least number for which it would be, were the readings to
 * agree with those there are.
 *
 * @param chance probability of conformity with the zone known as well as it would be then.
 */
export function seatingsToSettle(
  { requirement, zone, block, readings, kit, level }: ToSettle,
  chance = (then: KnownParts, _times: number) =>
    probabilityOfConformity(then, requirement.tolerance),
): Seatings {
  const counted = evidenceFor(requirement, readings);
  const equations = equationsOf(counted, block, kit);
  const repeated = repeatedBySeating(counted);
  const settles = (times: number): boolean => {
    const then = zoneOfRequirement(
      requirement,
      block,
      adjust(equations.map((one) => (repeated.has(one.reading) ? readAgain(one, times) : one))),
    );
    if (then === undefined) return false;
    // The value stays the one that was found: what further readings will say is not known.
    const parts = zone.parts.map(({ value }, index) => ({ ...then.parts[index]!, value }));
    return decide(chance({ ...then, parts }, times), level) !== 'too close to call';
  };
  if (!settles(MOST)) return 'none';
  let [not, yes] = [0, MOST];
  while (yes - not > 1) {
    const middle = Math.floor((not + yes) / 2);
    if (settles(middle)) yes = middle;
    else not = middle;
  }
  return yes;
}

/** True for a reading that is taken again with each seating of the block. */
export function isBySeating({ kind }: Reading): boolean {
  return kind === 'nose comparator' || kind === 'column' || kind === 'over the top';
}

/** What a lift of the block would have read once more, and how it sat. */
function repeatedBySeating(readings: readonly Reading[]): ReadonlySet<string> {
  return new Set(
    readings
      .filter(isBySeating)
      .flatMap((reading) =>
        'placing' in reading ? [reading.id, sitReading(reading.placing)] : [reading.id],
      ),
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
