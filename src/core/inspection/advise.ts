import type { Demand } from '../correction/plan/aim';
import { type Plans, plansFor } from '../correction/plan/plans-for';
import { sizesOf } from '../correction/plan/sizes';
import type { Part } from '../part/part';
import type { InspectionAnswer } from './inspect';
import { type NextReading, nextReading } from './next-reading';

/** What to do about what the readings say. */
export interface Advice {
  /** The reading that would most narrow the requirement hardest to decide. */
  readonly next: NextReading | undefined;
  /** What to take off. */
  readonly plans: Plans;
}

/**
 * The end of the chain: answer → next reading and correction. It takes longer than the answer
 * itself, which need not wait for it.
 */
export function advise(part: Part, answer: InspectionAnswer, demand: Demand): Advice {
  const { findings, adjustment } = answer;
  const measured = findings.flatMap((finding) => (finding.fixed ? [finding] : []));
  return {
    next: nextOf(part, answer),
    plans: plansFor(part, measured, sizesOf(part, adjustment), demand),
  };
}

/** The reading worth taking next, by itself. */
export function nextOf(part: Part, answer: InspectionAnswer): NextReading | undefined {
  const { readings, kit, findings, adjustment } = answer;
  return nextReading(part, readings, kit, findings, adjustment);
}
