import { adjust } from '../adjustment/adjustment';
import { type EquationCheck, suspectsAmong } from '../adjustment/checks';
import { type CorrectionOption, correctionOptions } from '../correction/options';
import type { Part } from '../part/part';
import { equationsOf } from '../readings/equations-of';
import type { Kit } from '../readings/kit';
import type { Reading } from '../readings/reading';
import { kitForChecks, withObservedSeating } from '../readings/repeats';
import { type GlobalTest, globalTest } from '../statistics/global-test';
import { snoopingLimit } from '../statistics/outliers';
import { type ComparatorAnswer, comparatorAnswers } from './comparators';
import { type Finding, findingsOf } from './findings';
import { type FormAnswer, formAnswers } from './forms';
import { type NextReading, nextReading } from './next-reading';
import { type SidesAnswer, sidesAnswers } from './sides';

/** One good reading in a thousand is suspected wrongly. */
const SNOOPING_SIGNIFICANCE = 0.001;

/** All that the readings of one inspection say. */
export interface InspectionAnswer {
  readonly sides: readonly SidesAnswer[];
  readonly findings: readonly Finding[];
  readonly comparators: readonly ComparatorAnswer[];
  readonly checks: readonly EquationCheck[];
  /** Readings that do not agree with the others; several where they cannot be told apart. */
  readonly suspects: readonly EquationCheck[];
  /** Whether the readings agree as well as their doubt says; undefined where none says anything twice. */
  readonly fit: GlobalTest | undefined;
  /** The reading that would most narrow the requirement hardest to decide. */
  readonly next: NextReading | undefined;
  /** The kit as it was reckoned with: the seating as the repeats show it, where they do. */
  readonly kit: Kit;
  /** The form of each line or face that was read at enough places. */
  readonly forms: readonly FormAnswer[];
  /** The ways to put right each requirement that was measured, in the order of the requirements. */
  readonly corrections: readonly (readonly CorrectionOption[])[];
}

/**
 * The whole chain: readings → adjustment → zones and verdict → correction.
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
  const judged = adjust(
    equationsOf(readings, part.block, kitForChecks(stated, readings, part.block)),
  );
  const { checks, chiSquare, degreesOfFreedom } = judged;
  const findings = findingsOf(part, readings, kit, level, adjustment);
  const measured = findings.flatMap((finding) => (finding.fixed ? [finding] : []));
  return {
    sides: sidesAnswers(readings, part.block, kit, adjustment),
    findings,
    comparators: comparatorAnswers(readings, adjustment),
    checks,
    suspects: suspectsAmong(checks, snoopingLimit(SNOOPING_SIGNIFICANCE)),
    fit: globalTest(chiSquare, degreesOfFreedom),
    next: nextReading(part, readings, kit, findings, adjustment),
    kit,
    forms: formAnswers(readings, kit),
    corrections: measured.map((target) => correctionOptions(target, measured, part, level)),
  };
}
