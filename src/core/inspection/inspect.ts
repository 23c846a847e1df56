import { type Adjustment, adjust } from '../adjustment/adjustment';
import type { EquationCheck } from '../adjustment/checks';
import { once } from '../once';
import type { Part } from '../part/part';
import type { Equation } from '../readings/equation';
import { equationsOf } from '../readings/equations-of';
import type { Kit } from '../readings/kit';
import type { Reading } from '../readings/reading';
import {
  type FarRepeats,
  farRepeats,
  kitForChecks,
  withObservedSeating,
} from '../readings/repeats';
import { type GlobalTest, globalTest } from '../statistics/global-test';
import { snoopingLimit } from '../statistics/outliers';
import { type ComparatorAnswer, comparatorAnswers } from './comparators';
import { type CrownAnswer, disagreementsAmong } from './crowns';
import { type Finding, findingsOf } from './findings';
import { type FlatnessFinding, flatnessFindings, type PlannedPlace } from './flatness';
import { type FormAnswer, formAnswers } from './forms';
import { type SidesAnswer, sidesAnswers } from './sides';

/** One good reading in a thousand is suspected wrongly, and one flat face in a thousand of a crown. */
const SNOOPING_SIGNIFICANCE = 0.001;

/** All that the readings of one inspection say. */
export interface InspectionAnswer {
  /** What was reckoned with. */
  readonly readings: readonly Reading[];
  readonly adjustment: Adjustment;
  readonly sides: readonly SidesAnswer[];
  readonly findings: readonly Finding[];
  /** What they say of every face that is to be flat. */
  readonly flatness: readonly FlatnessFinding[];
  readonly comparators: readonly ComparatorAnswer[];
  readonly checks: readonly EquationCheck[];
  /** Readings that do not agree with the others, the crowns reckoned with; several where they cannot be told apart. */
  readonly suspects: readonly EquationCheck[];
  /** Crowned and hollow faces that explain what disagrees, each as well as any slip or better. */
  readonly crowns: readonly CrownAnswer[];
  /** Whether the readings agree as well as their doubt says; undefined where none says anything twice. */
  readonly fit: GlobalTest | undefined;
  /** Repeats so far apart that the ± is wide, where there are too few to know the seating. */
  readonly farRepeats: FarRepeats | undefined;
  /** The kit as it was reckoned with: the seating as the repeats show it, where they do. */
  readonly kit: Kit;
  /** The form of each line or face that was read at enough places. */
  readonly forms: readonly FormAnswer[];
}

/**
 * The chain: readings → adjustment → zones and verdict. What to do about it: `advise`. The findings
 * are worked out at once, everything else when it is first asked for.
 *
 * @param level least probability for a verdict of in or out, above 0.5 and below 1.
 * @param planned places of maps that are still to be read.
 */
export function inspect(
  part: Part,
  readings: readonly Reading[],
  stated: Kit,
  level: number,
  planned: readonly PlannedPlace[] = [],
): InspectionAnswer {
  const { block } = part;
  const kit = withObservedSeating(stated, readings, block);
  const equations = equationsOf(readings, block, kit);
  const adjustment = adjust(equations);
  const judged = once(() => {
    const own = kitForChecks(stated, readings, block);
    return isSameSeating(own, kit)
      ? { equations, adjustment }
      : adjusted(equationsOf(readings, block, own));
  });
  const disagreements = once(() => {
    const { equations: all, adjustment: of } = judged();
    return disagreementsAmong(all, of, readings, block, snoopingLimit(SNOOPING_SIGNIFICANCE));
  });
  const sides = once(() => sidesAnswers(readings, block, kit, adjustment));
  const comparators = once(() => comparatorAnswers(readings, adjustment));
  const forms = once(() => formAnswers(readings, kit));
  const far = once(() => farRepeats(stated, readings, block));
  const flatness = once(() => flatnessFindings(part, readings, kit, level, planned));
  return {
    ...{ readings, adjustment, kit },
    findings: findingsOf(part, readings, kit, level, adjustment),
    get flatness() {
      return flatness();
    },
    get sides() {
      return sides();
    },
    get comparators() {
      return comparators();
    },
    get checks() {
      return judged().adjustment.checks;
    },
    get suspects() {
      return disagreements().suspects;
    },
    get crowns() {
      return disagreements().crowns;
    },
    get fit() {
      const { chiSquare, degreesOfFreedom } = judged().adjustment;
      return globalTest(chiSquare, degreesOfFreedom);
    },
    get farRepeats() {
      return far();
    },
    get forms() {
      return forms();
    },
  };
}

/** The same answer with other findings; what has not been asked for yet is still not worked out. */
export function withFindings(
  answer: InspectionAnswer,
  { findings, flatness }: Pick<InspectionAnswer, 'findings' | 'flatness'>,
): InspectionAnswer {
  return Object.defineProperties({} as InspectionAnswer, {
    ...Object.getOwnPropertyDescriptors(answer),
    findings: { value: findings, enumerable: true },
    flatness: { value: flatness, enumerable: true },
  });
}

function isSameSeating(one: Kit, other: Kit): boolean {
  return one.seating === other.seating && one.seatingDegrees === other.seatingDegrees;
}

function adjusted(equations: readonly Equation[]) {
  return { equations, adjustment: adjust(equations) };
}
