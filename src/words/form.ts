import type { LengthUnit } from '../core/units/length';
import type { Verdict } from '../core/verdict/conformity';
import type { SimulatedZone } from '../core/verdict/monte-carlo';
import type { FormSpan } from '../core/zones/zone-with-form';
import { deviation, deviationNumber, PER_CENT, size } from './numbers';
import { verdictInWords } from './verdicts';

/** What of a simulated zone is said, with the verdict that follows from it. */
type Said = Pick<SimulatedZone, 'width' | 'low' | 'high' | 'probability' | 'stable'> & {
  readonly verdict: Verdict;
};

/** The width with form and what it means for the drawing; without a zone, that it is on its way. */
export function withFormInWords(count: number, zone: Said | undefined, unit: LengthUnit): string {
  const form = `With the form at the ${count} points read:`;
  if (zone === undefined) return `${form} working it out…`;
  const about = zone.stable ? '' : 'about ';
  const [low, high] = [deviationNumber(zone.low, unit), deviationNumber(zone.high, unit)];
  const width = `${deviation(zone.width, unit)} (95${PER_CENT}: ${about}${low} to ${high})`;
  return `${form} ${width}. ${verdictInWords(zone)}`;
}

/** What a figure with form stands on, where its interval is beside it. */
export function formReadInWords(count: number, { stable }: Pick<SimulatedZone, 'stable'>): string {
  const interval = `the interval is for ${stable ? '' : 'about '}95${PER_CENT}`;
  return `With the form at the ${count} points read; ${interval}.`;
}

/** Shares of a face that are not read and yet no more than rounding. */
const ROUNDING = 1e-9;

/** How much of the face the readings span, where it is less than all; otherwise nothing. */
export function spansInWords(spans: readonly FormSpan[], unit: 'mm' | 'in'): string | undefined {
  const parts = spansBriefly(spans, unit);
  return parts && `The readings span ${parts}; beyond them the fitted plane is carried on.`;
}

/** The lengths of which less than all is read: '40 of 60 mm and 70 of 90 mm'. */
export function spansBriefly(spans: readonly FormSpan[], unit: 'mm' | 'in'): string | undefined {
  const short = spans.filter(({ read, face }) => read < face * (1 - ROUNDING));
  if (short.length === 0) return undefined;
  return short.map(({ read, face }) => `${span(read, unit)} of ${size(face, unit)}`).join(' and ');
}

/** A length without its unit. */
function span(millimetres: number, unit: 'mm' | 'in'): string {
  return size(millimetres, unit).replace(` ${unit}`, '');
}
