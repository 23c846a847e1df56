import { fromMicrometres, type LengthUnit } from '../core/units/length';
import { asFirstTyped } from './as-first-typed';
import { type LengthTextRead, readLengthText } from './length-text';

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
  const { text, unit: own } = firstTyped(typed);
  if (unit === own) return { text, unit };
  const read = readLengthText(text, own);
  if (read.kind === 'waiting' || read.kind === 'missing') return typed;
  if (read.kind !== 'length' || read.from === 'own unit') return { text, unit };
  const converted = lengthIn(read.length, unit);
  const back = readLengthText(converted, unit);
  const isSame =
    back.kind === 'length' &&
    Math.abs(back.length - read.length) < ROUNDING &&
    lengthIn(back.length, own) === text;
  return { text: converted, unit, ...(!isSame && { from: { text, unit: own } }) };
}

/** Lengths that differ by less are one: µm. */
const ROUNDING = 1e-8;

/** Reads what was typed: what it is shown as in another unit has fewer digits than it takes to say the same. */
export function readTyped(typed: TypedLength): LengthTextRead {
  const { text, unit } = firstTyped(typed);
  return readLengthText(text, unit);
}

/** What was typed, before any change of units. */
export function firstTyped(typed: TypedLength): TypedLength {
  return asFirstTyped(typed, converts);
}

function converts(text: string, own: LengthUnit, unit: LengthUnit): string | undefined {
  const read = readLengthText(text, own);
  return read.kind === 'length' ? lengthIn(read.length, unit) : undefined;
}

/** A length of `micrometres` as text in `unit`, as it would be typed. */
export function lengthIn(micrometres: number, unit: LengthUnit): string {
  const value = fromMicrometres(micrometres, unit);
  const { usual, most } = DECIMALS[unit];
  const first = Math.floor(Math.log10(Math.abs(value)));
  return lengthText(value, Math.min(Math.max(usual, FIGURES - 1 - first), most));
}

/** Figures that a length has at least, however small it is. */
const FIGURES = 3;

/**
 * Decimals that a length is shown with: as a rule those that an instrument has, to a hundredth of a
 * µm or what comes nearest; at most to a tenth of a nanometre.
 */
const DECIMALS: Readonly<Record<LengthUnit, { readonly usual: number; readonly most: number }>> = {
  µm: { usual: 2, most: 4 },
  mm: { usual: 5, most: 7 },
  tenths: { usual: 2, most: 5 },
  thou: { usual: 3, most: 6 },
  in: { usual: 6, most: 9 },
};

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
