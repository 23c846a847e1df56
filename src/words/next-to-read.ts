import type { Asked } from '../core/part/requirement';
import type { LengthUnit } from '../core/units/length';
import { requirementName } from './faces';
import { deviation, deviationNumber } from './numbers';

interface NextInWords {
  readonly name: string;
  readonly requirements: readonly Asked[];
  readonly difference: boolean;
}

/** What the next reading is and will tell: 'Next Left side: it fixes right square to bottom'. */
export function nextToReadInWords({ name, requirements, difference }: NextInWords): string {
  const [first] = requirements;
  if (first !== undefined) {
    const others = requirements.length > 1 ? ` and ${requirements.length - 1} more` : '';
    return `Next: ${name}. It fixes ${lowered(requirementName(first))}${others}`;
  }
  return difference ? `Next: ${name}. It shows what the sides differ by` : `Next: ${name}`;
}

/**
 * How far the next reading narrows the doubt of what is known: from an expanded uncertainty of `now` to
 * one of about `then`, both in µm. Half a repeat may widen it until the other half is read: that is no
 * reason to take it.
 */
export function narrowsInWords(name: string, now: number, then: number, unit: LengthUnit): string {
  const isNarrower = then < now && deviationNumber(then, unit) !== deviationNumber(now, unit);
  if (!isNarrower) return `Next: ${name}`;
  return `Next: ${name}. The ± goes to about ${deviation(then, unit)}`;
}

function lowered(text: string): string {
  return text.charAt(0).toLowerCase() + text.slice(1);
}
