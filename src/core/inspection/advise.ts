import type { Demand } from '../correction/plan/aim';
import { type Plans, plansFor } from '../correction/plan/plans-for';
import { sizesOf } from '../correction/plan/sizes';
import type { Part } from '../part/part';
import type { InspectionAnswer } from './inspect';
import { type NextReading, nextReading } from './next-reading';
import { once } from './once';

/** What to do about what the readings say. */
export interface Advice {
  /** The reading that would most narrow the requirement hardest to decide. */
  readonly next: NextReading | undefined;
  /** What to take off. */
  readonly plans: Plans;
}

/**
 * The end of the chain: answer → next reading and correction. Each is worked out when it is first
 * asked for: it takes longer than the answer itself, which need not wait for it.
 */
export function advise(part: Part, answer: InspectionAnswer, demand: Demand): Advice {
  const next = once(() => nextOf(part, answer));
  const plans = once(() => plansOf(part, answer, demand));
  return {
    get next() {
      return next();
    },
    get plans() {
      return plans();
    },
  };
}

function plansOf(part: Part, { findings, adjustment }: InspectionAnswer, demand: Demand): Plans {
  const measured = findings.flatMap((finding) => (finding.fixed ? [finding] : []));
  return plansFor(part, measured, sizesOf(part, adjustment), demand);
}

/** The reading worth taking next, by itself. */
export function nextOf(part: Part, answer: InspectionAnswer): NextReading | undefined {
  const { readings, kit, findings, adjustment } = answer;
  return nextReading(part, readings, kit, findings, adjustment);
}
