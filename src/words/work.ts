import type { Rate } from '../core/correction/rate';
import { expanded } from '../core/statistics/coverage';
import type { LengthUnit } from '../core/units/length';
import { withDoubt } from './numbers';

/** A rate as the shop speaks of it: µm of wedge in ten seconds or strokes. */
export function rateInWords(rate: Rate, per: 'seconds' | 'strokes', unit: LengthUnit): string {
  return `${withDoubt(rate.value * 10, expanded(rate) * 10, unit)} in 10 ${per}`;
}
