import { fromMicrometres, type LengthUnit, toMicrometres } from '../core/units/length';
import { readNumber } from './number';

/** A length as a person typed it, with the unit that stood beside the field. */
export interface TypedLength {
  readonly text: string;
  readonly unit: LengthUnit;
}

/** An empty field in `unit`. */
export function blank(unit: LengthUnit): TypedLength {
  return { text: '', unit };
}

/** True where nothing has been typed. */
export function isBlank(typed: TypedLength): boolean {
  return typed.text.trim() === '';
}

/** The same length in another unit. What cannot be read as a number keeps its text, to be put right. */
export function inUnit(typed: TypedLength, unit: LengthUnit): TypedLength {
  if (unit === typed.unit) return typed;
  const read = readNumber(typed.text);
  if (!read.ok) return { text: typed.text, unit };
  const length = toMicrometres(read.value, typed.unit);
  return { text: lengthText(fromMicrometres(length, unit), DECIMALS[unit]), unit };
}

/**
 * Decimals kept in each unit when converting: to a tenth of a nanometre, and one more in the inch
 * units, so that there and back again gives what was typed.
 */
const DECIMALS: Readonly<Record<LengthUnit, number>> = { µm: 4, mm: 7, tenths: 5, thou: 6, in: 9 };

/** Decimal text without an exponent and without idle zeros. */
export function lengthText(value: number, decimals: number): string {
  const fixed = value.toFixed(decimals);
  const text = fixed.includes('.') ? fixed.replace(/\.?0+$/, '') : fixed;
  return text === '-0' ? '0' : text;
}

/** The unit for a small length where sizes are in `size`. */
export function smallUnit(size: 'mm' | 'in'): LengthUnit {
  return size === 'in' ? 'tenths' : 'µm';
}
