import type { EquationCheck } from '../core/adjustment/checks';
import type { NextReading } from '../core/inspection/next-reading';
import { expanded } from '../core/statistics/coverage';
import type { GlobalTest } from '../core/statistics/global-test';
import type { LengthUnit } from '../core/units/length';
import { deviation, deviationNumber } from './numbers';
import { remedyInWords } from './remedies';

/** Whether the readings agree as well as their doubt says. */
export function fitInWords(fit: GlobalTest | undefined): string {
  if (fit === undefined) {
    return 'Nothing was read twice, so nothing can disagree, and a slip would not show.';
  }
  return fit.passes
    ? 'They agree as well as their doubt says. (One good reading in a thousand would be suspected wrongly.)'
    : 'They disagree by more than their doubt says: look for a slip, dirt, or a face that is not flat.';
}

/** A reading that does not agree with the others. */
export function suspectInWords(
  name: string,
  { blunder }: EquationCheck,
  among: number,
  unit: LengthUnit,
): string {
  const size = blunder ?? 0;
  const off = `${deviation(Math.abs(size), unit)} ${size > 0 ? 'high' : 'low'}`;
  const doubt = among > 1 ? `It may be this one of ${among}, not to be told apart. ` : '';
  return `${name} looks ${off}. ${doubt}A chip under the part, a slip in reading or typing? Read it again, or leave it out.`;
}

/** Readings that the others do not check. */
export function uncheckedInWords(names: readonly string[]): string {
  return `Nothing checks: ${names.join('; ')}. A slip there would go unseen.`;
}

/** The reading worth taking next, and what it brings. */
export function nextInWords(
  { remedy, now, then }: NextReading,
  degreesOfFreedom: number,
  unit: LengthUnit,
): string {
  const doubt = (standard: number) =>
    deviationNumber(expanded({ standard, degreesOfFreedom }), unit);
  const what = remedyInWords(remedy);
  return `Worth adding: ${what}. The ± goes from ${doubt(now)} to about ${doubt(then)} ${unit}.`;
}
