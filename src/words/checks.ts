import type { EquationCheck } from '../core/adjustment/checks';
import type { Remedy } from '../core/inspection/candidates/candidate';
import type { CrownAnswer } from '../core/inspection/crowns';
import type { NextReading } from '../core/inspection/next-reading';
import { faceTowards, oppositeFace } from '../core/part/faces';
import { expanded } from '../core/statistics/coverage';
import type { GlobalTest } from '../core/statistics/global-test';
import type { LengthUnit } from '../core/units/length';
import { pairName } from './faces';
import { deviation, deviationNumber, size, withDoubt } from './numbers';
import { remedyInWords } from './remedies';

/** Said beside a figure that comes from readings which do not fit each other. */
export const DISAGREEMENT = 'The readings disagree';

/** Whether the readings agree as well as their doubt says. */
export function fitInWords(fit: GlobalTest | undefined): string {
  if (fit === undefined) {
    return 'Nothing was read twice, so nothing can disagree, and a slip would not show.';
  }
  return fit.passes
    ? 'They agree as well as their doubt says. (One good reading in a thousand would be suspected wrongly.)'
    : 'They disagree by more than their doubt says: look for a slip, dirt, or a face that is not flat.';
}

/** Said in the bar where repeats are so far apart that the ± is wide; `name` is of the first of them. */
export function doesNotRepeatInWords(name: string): string {
  return `${name} does not repeat`;
}

/** The same in full, with what to do about it. */
export function farRepeatsInWords(
  [one, other]: readonly [string, string],
  apart: number,
  unit: LengthUnit,
): string {
  return `${one} and ${other} do not repeat: the block sat ${deviation(apart, unit)} differently at its edge, more than the seating in the kit explains. So few repeats cannot tell how well it sits, which makes the ± wide. Put it right if one of them is a slip; if not, wipe plate and part, look for a burr, lift it and read that side once more.`;
}

/** A crown or hollow that explains readings which disagree, as well as a slip or better. */
export function crownInWords(crown: CrownAnswer, unit: LengthUnit, sizeUnit: 'mm' | 'in'): string {
  const { face, of, along, span, rise, readings, orSlip, byColumn } = crown;
  const what =
    of === 'face'
      ? `readings of the ${face} fit a face that is`
      : `micrometer readings over ${pairName([face, oppositeFace(face)])} fit faces that together are`;
  const bow = rise.value < 0 ? 'hollow' : 'crowned';
  const amount = withDoubt(Math.abs(rise.value), expanded(rise), unit);
  const way = `from ${faceTowards(along, -1)} to ${faceTowards(along, 1)}, over ${size(span, sizeUnit)}`;
  const than =
    orSlip.length === 0
      ? 'better than a slip in any one of them'
      : 'as well as a slip in one of them. A place more in between would tell';
  const column = byColumn ? ' A column that is not straight would look the same.' : '';
  return `These ${readings.length} ${what} ${bow} by ${amount} ${way}, ${than}.${column}`;
}

/** A slip that would explain the readings as well as a crown does. */
export function orSlipInWords(name: string, check: EquationCheck, unit: LengthUnit): string {
  return `Or a slip: ${name} ${offInWords(check, unit)}. Read it again, or leave it out.`;
}

/**
 * A reading that does not agree with the others.
 *
 * @param beside true where a crown is told, which does not explain this one.
 * @param swapped what was typed with two digits the other way round, where it would fit.
 */
export function suspectInWords(
  name: string,
  check: EquationCheck,
  unit: LengthUnit,
  beside = false,
  swapped?: string,
): string {
  const looks = `${beside ? 'Even so, ' : ''}${name} ${offInWords(check, unit)}. `;
  return `${looks}${swappedInWords(swapped)}${WHY_OFF} Read it again, or leave it out.`;
}

const WHY_OFF = 'A chip or dirt in between, a slip in reading or typing?';

/** Readings one of which does not agree with the others; which one, they do not tell. */
export function oneOfSuspectsInWords(count: number, beside = false): string {
  return `${beside ? 'Even so, one' : 'One'} of these ${count} is off; they cannot tell which. ${WHY_OFF} Read them again, or leave one out.`;
}

/** One of them: by how much, were it this one. */
export function ifThisInWords(
  name: string,
  check: EquationCheck,
  unit: LengthUnit,
  swapped?: string,
): string {
  return `${name} ${offInWords(check, unit)}. ${swappedInWords(swapped)}`.trim();
}

/** What would fit in place of a reading that does not. */
export function swappedInWords(swapped: string | undefined): string {
  return swapped === undefined ? '' : `Two digits swapped? ${swapped} would fit. `;
}

function offInWords({ blunder = 0 }: EquationCheck, unit: LengthUnit): string {
  return `looks ${deviation(Math.abs(blunder), unit)} ${blunder > 0 ? 'high' : 'low'}`;
}

/** Readings that the others do not check. */
export function uncheckedInWords(names: readonly string[]): string {
  return `Nothing checks: ${names.join('; ')}. A slip there would go unseen.`;
}

/** Beside a figure many times what the drawing allows, where nothing checks it. */
export const MAY_BE_SLIP = 'Nothing checks it yet. A slip?';

/** The reading worth taking next, where there is no room for what it brings: both sides may have been read before. */
export function surerInWords(remedy: Remedy): string {
  const what =
    remedy.kind === 'compare both sides'
      ? `read ${pairName(remedy.faces)} again, both with one setting`
      : remedyInWords(remedy);
  return `To be surer: ${what}`;
}

/** The reading worth taking next, and what it brings. */
export function nextInWords(
  { remedy, now, then, hasForm }: NextReading,
  degreesOfFreedom: number,
  unit: LengthUnit,
): string {
  const doubt = (standard: number) =>
    deviationNumber(expanded({ standard, degreesOfFreedom }), unit);
  const whose = hasForm ? 'The ± of its plane, form left out, goes' : 'The ± goes';
  return `${surerInWords(remedy)}. ${whose} from ${doubt(now)} to about ${doubt(then)} ${unit}.`;
}
