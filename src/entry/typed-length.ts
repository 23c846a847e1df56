import { fromMicrometres, type LengthUnit } from '../core/units/length';
import { readLengthText } from './length-text';

/** A length as a person typed it, with the unit that stood beside the field. */
export interface TypedLength {
  readonly text: string;
  readonly unit: LengthUnit;
  /** What was typed, where the text is that in another unit: how finely somebody read shows there alone. */
  readonly from?: { readonly text: string; readonly unit: LengthUnit };
}

/** An empty field in `unit`. */
export function blank(unit: LengthUnit): TypedLength {
  return { text: '', unit };
}

/** True where nothing has been typed. */
export function isBlank(typed: TypedLength): boolean {
  return typed.text.trim() === '';
}

/**
 * The same length in another unit; back in its own it is what was typed, to the last digit. A text
 * with a unit of its own says the same in any; so is kept what cannot be read, to be put right. A sum
 * that cannot be worked out yet stays in the unit it is in.
 */
export function inUnit(typed: TypedLength, unit: LengthUnit): TypedLength {
  if (unit === typed.unit) return typed;
  const { text, unit: own } = asFirstTyped(typed);
  if (unit === own) return { text, unit };
  const read = readLengthText(text, own);
  if (read.kind === 'waiting' || read.kind === 'missing') return typed;
  if (read.kind !== 'length' || read.from === 'own unit') return { text, unit };
  const converted = lengthIn(read.length, unit);
  const back = readLengthText(converted, unit);
  const isBack = back.kind === 'length' && lengthIn(back.length, own) === text;
  return { text: converted, unit, ...(!isBack && { from: { text, unit: own } }) };
}

/** What was typed, before any change of units: where the text has been changed since, that is it. */
function asFirstTyped({ text, unit, from }: TypedLength): TypedLength {
  const read = from && readLengthText(from.text, from.unit);
  const stands = read?.kind === 'length' && lengthIn(read.length, unit) === text;
  return from !== undefined && stands ? from : { text, unit };
}

/** A length of `micrometres` as text in `unit`, as it would be typed. */
export function lengthIn(micrometres: number, unit: LengthUnit): string {
  return lengthText(fromMicrometres(micrometres, unit), DECIMALS[unit]);
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
