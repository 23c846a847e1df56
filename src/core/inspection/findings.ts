import { type Adjustment, adjust } from '../adjustment/adjustment';
import { once } from '../once';
import type { Part } from '../part/part';
import type { Requirement } from '../part/requirement';
import { equationsOf } from '../readings/equations-of';
import type { Kit } from '../readings/kit';
import type { Reading } from '../readings/reading';
import { decide, type Verdict } from '../verdict/conformity';
import type { SimulatedZone } from '../verdict/monte-carlo';
import { probabilityOfConformity } from '../verdict/probability';
import { zoneForms } from '../zones/requirement-forms';
import type { Zone } from '../zones/zone';
import { zoneOfRequirement } from '../zones/zone-of-requirement';
import { type FormPoint, type FormSpan, formSpansOf } from '../zones/zone-with-form';
import { candidatesFor } from './candidates';
import type { Remedy } from './candidates/candidate';
import { evidenceFor, isMeasured } from './evidence';
import { formRead } from './form-read';
import { remediesFor } from './remedies';
import { type Seatings, seatingsToSettle } from './seatings';

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
      /** Where it is too close to call: how many more seatings of each side would settle it, worked out when first asked for. With form, once somebody has worked it out (`seatingsToSettleWithForm`). */
      readonly seatings?: Seatings | undefined;
      /** What the points span of the face; none where there is no point. */
      readonly formSpans: readonly FormSpan[];
    }
  | {
      readonly fixed: false;
      readonly requirement: Requirement;
      /** The smallest sets of further work that would fix it; any one of them will do. Worked out when first asked for. */
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
  const assumptions = readings.filter((reading) => !isMeasured(reading));
  const ofMeasured =
    assumptions.length === 0
      ? adjustment
      : adjust(equationsOf(readings.filter(isMeasured), part.block, kit));

  return part.requirements.map((requirement) => {
    const counted = evidenceFor(requirement, readings);
    const own = counted.length < readings.length ? ofMeasured : adjustment;
    const zone = zoneOfRequirement(requirement, part.block, own);
    if (zone === undefined) {
      const remedies = once(() => {
        const candidates = candidatesFor(requirement, counted, part.block);
        const forms = zoneForms(requirement, part.block);
        return remediesFor(forms, counted, candidates, part.block, kit);
      });
      return {
        fixed: false,
        requirement,
        get remedies() {
          return remedies();
        },
      };
    }
    const assumed = assumptions.some(({ id }) => zone.restsOn.has(id));
    const formPoints = formRead(requirement, readings, part.block, kit);
    const formSpans = formSpansOf(requirement, formPoints, part.block);
    const probability = probabilityOfConformity(zone, requirement.tolerance);
    const verdict = decide(probability, level);
    const seen = { zone, probability, verdict, assumed, formPoints, formSpans };
    if (verdict !== 'too close to call' || formPoints.length > 0) {
      return { fixed: true, requirement, ...seen };
    }
    const asked = { requirement, zone, block: part.block, readings, kit, level };
    const seatings = once(() => seatingsToSettle(asked));
    return {
      fixed: true,
      requirement,
      ...seen,
      get seatings() {
        return seatings();
      },
    };
  });
}
