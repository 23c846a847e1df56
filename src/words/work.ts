import type { Rate } from '../core/correction/rate';
import type { LearnedRate, Range } from '../core/correction/rates/learn-rate';
import type { NextPass } from '../core/correction/rates/next-pass';
import { expanded } from '../core/statistics/coverage';
import type { LengthUnit } from '../core/units/length';
import { deviation, deviationNumber, withDoubt } from './numbers';

type Count = 'seconds' | 'strokes';

/** Rates are spoken of for so many seconds or strokes. */
const SPOKEN = 10;

/** A rate as the shop speaks of it: µm of wedge in ten seconds or strokes. */
export function rateInWords(rate: Rate, per: Count, unit: LengthUnit): string {
  return `${withDoubt(rate.value * SPOKEN, expanded(rate) * SPOKEN, unit)} in ${SPOKEN} ${per}`;
}

/** A range as 'middle (low to high)', with the unit. */
function rangeInWords({ low, median, high }: Range, unit: LengthUnit): string {
  return `${deviation(median, unit)} (${deviationNumber(low, unit)} to ${deviationNumber(high, unit)})`;
}

/** What a way of working typically takes off: '3.46 µm (0.90 to 13.2) in 10 seconds'. */
export function typicalInWords({ typical }: LearnedRate, per: Count, unit: LengthUnit): string {
  const { low, median, high } = typical;
  const spoken = { low: low * SPOKEN, median: median * SPOKEN, high: high * SPOKEN };
  return `${rangeInWords(spoken, unit)} in ${SPOKEN} ${per}`;
}

/** Where a rate is from, as a sentence. */
export function rateBasisInWords({ priorAlone, basis, passes }: LearnedRate): string {
  const practice =
    basis === 'common practice'
      ? 'common practice (no source) for aluminium on P320 to P400'
      : 'common practice for aluminium (no source), and nothing is known of this material and abrasive: so it is wide';
  if (priorAlone) return `No pass of yours tells it yet: from ${practice}.`;
  return `From ${passes === 1 ? 'one pass' : `${passes} passes`} of yours, begun from ${practice}.`;
}

/** An amount of work that a hand can keep to. */
export function amountInWords(amount: number, per: Count): string {
  if (amount < 1) return per === 'strokes' ? 'less than one stroke' : 'less than a second';
  const text = amount < 10 ? String(Math.floor(amount * 2) / 2) : String(Math.floor(amount));
  return `${text} ${text === '1' ? per.slice(0, -1) : per}`;
}

/** How long to work before measuring again. */
export function nextPassInWords(
  { amount, removal }: NextPass,
  per: Count,
  unit: LengthUnit,
): string {
  return `First ${amountInWords(amount, per)}, then measure again. Likely that takes off ${rangeInWords(removal, unit)}: 9 times in 10 no more than is wanted.`;
}
