import { type Adjustment, adjust } from '../adjustment/adjustment';
import type { Part } from '../part/part';
import { kindOf, type Requirement } from '../part/requirement';
import { equationsOf } from '../readings/equations-of';
import type { Kit } from '../readings/kit';
import type { Reading } from '../readings/reading';
import { decide, type Verdict } from '../verdict/conformity';
import type { SimulatedZone } from '../verdict/monte-carlo';
import { probabilityOfConformity } from '../verdict/probability';
import { zoneForms } from '../zones/requirement-forms';
import type { Zone } from '../zones/zone';
import { zoneOfRequirement } from '../zones/zone-of-requirement';
import { type FormPoint, type FormSpan, formPointsOf, formSpansOf } from '../zones/zone-with-form';
import { candidatesFor, type Remedy } from './candidates';
import { remediesFor } from './remedies';
import { seatingsToSettle } from './seatings';

/** What the readings say of one requirement. */
export type Finding =
  | {
      readonly fixed: true;
      readonly requirement: Requirement;
      readonly zone: Zone;
      /** Probability that the part meets the requirement (JCGM 106). */
      readonly probability: number;
      readonly verdict: Verdict;
      /** True where the answer leans on somebody's word that two faces are parallel. */
      readonly assumed: boolean;
      /** Where the readings show form, which zone and probability leave out; `simulateZone` takes it up. */
      readonly formPoints: readonly FormPoint[];
      /** The zone with form, once somebody has simulated it: then probability and verdict are its. */
      readonly withForm?: SimulatedZone;
      /** Where it is too close to call: how many more seatings of each side would settle it, if any do. */
      readonly seatings?: number;
      /** What the points span of the face; none where there is no point. */
      readonly formSpans: readonly FormSpan[];
    }
  | {
      readonly fixed: false;
      readonly requirement: Requirement;
      /** The smallest sets of further work that would fix it; any one of them will do. */
      readonly remedies: readonly (readonly Remedy[])[];
    };

/** The finding for every requirement of the part. */
export function findingsOf(
  part: Part,
  readings: readonly Reading[],
  kit: Kit,
  level: number,
  adjustment: Adjustment,
): readonly Finding[] {
  const isAssumption = ({ kind }: Reading) => kind === 'assumed parallel';
  const measured = readings.filter((reading) => !isAssumption(reading));
  const assumptions = new Set(readings.filter(isAssumption).map(({ id }) => id));
  const ofMeasured = adjust(equationsOf(measured, part.block, kit));

  return part.requirements.map((requirement) => {
    // An assumption of parallel faces cannot be the proof that they are parallel.
    const proof = kindOf(requirement) === 'parallelism';
    const zone = zoneOfRequirement(requirement, part.block, proof ? ofMeasured : adjustment);
    if (zone === undefined) {
      const known = proof ? measured : readings;
      const candidates = candidatesFor(requirement, known, part.block);
      const forms = zoneForms(requirement, part.block);
      const remedies = remediesFor(forms, known, candidates, part.block, kit);
      return { fixed: false, requirement, remedies };
    }
    const probability = probabilityOfConformity(zone, requirement.tolerance);
    const formPoints = formPointsOf(requirement, readings, part.block, kit);
    const verdict = decide(probability, level);
    const seatings =
      verdict === 'too close to call'
        ? seatingsToSettle(requirement, zone, part, proof ? measured : readings, kit, level)
        : undefined;
    return {
      fixed: true,
      requirement,
      zone,
      probability,
      verdict,
      assumed: [...zone.restsOn].some((id) => assumptions.has(id)),
      formPoints,
      ...(seatings !== undefined && { seatings }),
      formSpans: formSpansOf(requirement, formPoints, part.block),
    };
  });
}
