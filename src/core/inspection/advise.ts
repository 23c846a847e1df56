import type { Demand } from '../correction/plan/aim';
import { type Plans, plansInPieces } from '../correction/plan/plans-for';
import { sizesOf } from '../correction/plan/sizes';
import { once } from '../once';
import type { Part } from '../part/part';
import type { InspectionAnswer } from './inspect';
import { type NextReading, nextReading } from './next-reading';

/** What to do about what the readings say. */
export interface Advice {
  /** The reading that would most narrow the requirement hardest to decide. */
  readonly next: NextReading | undefined;
  /** What to take off. */
  readonly plans: Plans;
  /** Each works out a piece of the plans: all of them called, these are there at once. */
  readonly pieces: readonly (() => void)[];
}

/**
 * The end of the chain: answer → next reading and correction. Each is worked out when it is first
 * asked for: it takes longer than the answer itself, which need not wait for it.
 */
export function advise(part: Part, answer: InspectionAnswer, demand: Demand): Advice {
  const next = once(() => nextOf(part, answer));
  const inPieces = once(() => plansOf(part, answer, demand));
  return {
    get next() {
      return next();
    },
    get plans() {
      return inPieces().plans();
    },
    get pieces() {
      return inPieces().pieces;
    },
  };
}

function plansOf(part: Part, { findings, adjustment }: InspectionAnswer, demand: Demand) {
  const measured = findings.flatMap((finding) => (finding.fixed ? [finding] : []));
  return plansInPieces(part, measured, sizesOf(part, adjustment), demand);
}

/** The reading worth taking next, by itself. */
export function nextOf(part: Part, answer: InspectionAnswer): NextReading | undefined {
  const { readings, kit, findings, adjustment } = answer;
  return nextReading(part, readings, kit, findings, adjustment);
}
