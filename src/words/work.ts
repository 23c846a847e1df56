import type { Rate } from '../core/correction/rate';
import type { Drift } from '../core/correction/rates/drift';
import type { LearnedRate, Range } from '../core/correction/rates/learn-rate';
import type { NextPass } from '../core/correction/rates/next-pass';
import type { Pass } from '../core/correction/rates/pass';
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

/** What a way of working typically takes off: '3.46 µm (0.90 to 13.20) in 10 seconds'. */
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
      : 'common practice for aluminium (no source), taken wide: there is none for this material and abrasive';
  if (priorAlone) return `No pass of yours tells it yet: from ${practice}.`;
  return `From ${passes === 1 ? 'one pass' : `${passes} passes`} of yours, begun from ${practice}.`;
}

/** Whether the passes drift, as a sentence; undefined ones are too few to tell. */
export function driftInWords(drift: Drift | undefined): string {
  if (drift === undefined) return 'Too few passes to tell whether it becomes slower or faster.';
  if (drift.sense === 'none') return `No drift in the last ${drift.passes} passes.`;
  const likely = drift.sense === 'slower' ? ': paper that wears or clogs does so' : '';
  return `It becomes ${drift.sense} from pass to pass${likely}.`;
}

/** How much single passes scatter: two of three lie within the factor. */
export function scatterInWords({ scatter }: Pick<LearnedRate, 'scatter'>): string {
  return `Single passes scatter: two of three lie within ${Math.exp(scatter).toFixed(2)} times the typical rate, up or down.`;
}

/** The rate of one pass as the shop speaks of it, in µm in so many seconds or strokes, with its expanded uncertainty. */
export function passRate({ wedge, amount, ...doubt }: Pass): {
  readonly value: number;
  readonly expanded: number;
} {
  const spoken = SPOKEN / amount;
  return { value: wedge * spoken, expanded: expanded(doubt) * spoken };
}

/** The unit of that, at an axis: 'µm in 10 seconds'. */
export function rateUnit(per: Count, unit: LengthUnit): string {
  return `${unit} in ${SPOKEN} ${per}`;
}

/** A rate per second or stroke as the shop speaks of it. */
export function spokenRate(rate: number): number {
  return rate * SPOKEN;
}

/** How long to work before measuring again. */
export function nextPassInWords(
  { amount, removal }: NextPass,
  per: Count,
  unit: LengthUnit,
): string {
  const kept = handyAmount(amount, per);
  if (kept === 0) {
    return `Even one ${per.slice(0, -1)} may take off more than is wanted: go finer, and lighter, and measure after each touch.`;
  }
  // What a hand can keep to is a little less, and takes off less.
  const share = kept / amount;
  const { low, median, high } = removal;
  const taken = { low: low * share, median: median * share, high: high * share };
  const count = kept === 1 ? `1 ${per.slice(0, -1)}` : `${kept} ${per}`;
  return `First ${count}, then measure again. Likely that takes off ${rangeInWords(taken, unit)}: 9 times in 10 no more than is wanted.`;
}

/** The most that is no more than `amount` and that a hand can keep to: whole strokes, half seconds while they are few. */
function handyAmount(amount: number, per: Count): number {
  const step = per === 'seconds' && amount < 10 ? 0.5 : 1;
  const kept = Math.floor(amount / step) * step;
  return kept < 1 ? 0 : kept;
}

/** Said beside a wedge of which the readings after the work took thicknesses over from before it. */
export const TAKEN_OVER_IN_WORDS =
  'Thicknesses were taken over from before the work: what is wrong with one is in both readings alike, and falls out of the wedge. The ± counts it twice, and is rather too wide.';

/** Said beside what came off where the readings before or after the work are not to be trusted. */
export const IN_DOUBT_IN_WORDS =
  'The readings before or after disagree: what came off is in doubt, and how fast it cuts is not learned from it.';
