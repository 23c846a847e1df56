import { adjust, type EquationCheck } from '../adjustment/adjustment';
import { type CorrectionOption, correctionOptions } from '../correction/options';
import type { Part } from '../part/part';
import { equationsOf } from '../readings/equations-of';
import type { Kit } from '../readings/kit';
import type { Reading } from '../readings/reading';
import { type ComparatorAnswer, comparatorAnswers } from './comparators';
import { type Finding, findingsOf } from './findings';
import { type SidesAnswer, sidesAnswers } from './sides';

/** All that the readings of one inspection say. */
export interface InspectionAnswer {
  readonly sides: readonly SidesAnswer[];
  readonly findings: readonly Finding[];
  readonly comparators: readonly ComparatorAnswer[];
  readonly checks: readonly EquationCheck[];
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
  kit: Kit,
  level: number,
): InspectionAnswer {
  const adjustment = adjust(equationsOf(readings, part.block, kit));
  const findings = findingsOf(part, readings, kit, level, adjustment);
  const measured = findings.flatMap((finding) => (finding.fixed ? [finding] : []));
  return {
    sides: sidesAnswers(readings, part.block, kit, adjustment),
    findings,
    comparators: comparatorAnswers(readings, adjustment),
    checks: adjustment.checks,
    corrections: measured.map((target) => correctionOptions(target, measured, part, level)),
  };
}
