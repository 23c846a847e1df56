import { type Adjustment, adjust } from '../adjustment/adjustment';
import type { EquationCheck } from '../adjustment/checks';
import type { Part } from '../part/part';
import { equationsOf } from '../readings/equations-of';
import type { Kit } from '../readings/kit';
import type { Reading } from '../readings/reading';
import { kitForChecks, withObservedSeating } from '../readings/repeats';
import { type GlobalTest, globalTest } from '../statistics/global-test';
import { snoopingLimit } from '../statistics/outliers';
import { type ComparatorAnswer, comparatorAnswers } from './comparators';
import { type CrownAnswer, disagreementsAmong } from './crowns';
import { type Finding, findingsOf } from './findings';
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
  readonly comparators: readonly ComparatorAnswer[];
  readonly checks: readonly EquationCheck[];
  /** Readings that do not agree with the others, the crowns reckoned with; several where they cannot be told apart. */
  readonly suspects: readonly EquationCheck[];
  /** Crowned and hollow faces that explain what disagrees, each as well as any slip or better. */
  readonly crowns: readonly CrownAnswer[];
  /** Whether the readings agree as well as their doubt says; undefined where none says anything twice. */
  readonly fit: GlobalTest | undefined;
  /** The kit as it was reckoned with: the seating as the repeats show it, where they do. */
  readonly kit: Kit;
  /** The form of each line or face that was read at enough places. */
  readonly forms: readonly FormAnswer[];
}

/**
 * The chain: readings → adjustment → zones and verdict. What to do about it: `advise`.
 *
 * @param level least probability for a verdict of in or out, above 0.5 and below 1.
 */
export function inspect(
  part: Part,
  readings: readonly Reading[],
  stated: Kit,
  level: number,
): InspectionAnswer {
  const kit = withObservedSeating(stated, readings, part.block);
  const adjustment = adjust(equationsOf(readings, part.block, kit));
  const equations = equationsOf(readings, part.block, kitForChecks(stated, readings, part.block));
  const judged = adjust(equations);
  const { checks, chiSquare, degreesOfFreedom } = judged;
  const findings = findingsOf(part, readings, kit, level, adjustment);
  return {
    readings,
    adjustment,
    sides: sidesAnswers(readings, part.block, kit, adjustment),
    findings,
    comparators: comparatorAnswers(readings, adjustment),
    checks,
    ...disagreementsAmong(
      equations,
      judged,
      readings,
      part.block,
      snoopingLimit(SNOOPING_SIGNIFICANCE),
    ),
    fit: globalTest(chiSquare, degreesOfFreedom),
    kit,
    forms: formAnswers(readings, kit),
  };
}
