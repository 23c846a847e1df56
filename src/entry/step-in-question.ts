import { type LengthUnit, sizeUnitOf } from '../core/units/length';
import { defaultKit, type KitEntry } from './kit-entry';
import type { TypedLength } from './typed-length';

/** The smallest step of a dial that reads in inches. Common practice, no source. */
export const INCH_STEP: TypedLength = { text: '1', unit: 'tenths' };

const USUAL = defaultKit().indicatorResolution;

/**
 * True where readings are typed in parts of an inch, and the kit has still the metric step that it
 * began with: the ± would come out too small for a dial that steps by a tenth.
 */
export function isStepInQuestion(kit: KitEntry, reading: LengthUnit): boolean {
  const { text, unit } = kit.indicatorResolution;
  if (sizeUnitOf(reading) === 'mm' || kit.chosen?.indicator !== undefined) return false;
  return text === USUAL.text && unit === USUAL.unit;
}
