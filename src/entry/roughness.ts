import { asFirstTyped } from './as-first-typed';
import { fieldKey } from './field-keys';
import { readNumber } from './number';
import type { ProblemList } from './problems';
import { lengthText } from './typed-length';

/** A roughness Ra as typed. */
export interface TypedRoughness {
  readonly text: string;
  readonly unit: RoughnessUnit;
  /** What was typed, where the text is that in the other unit. */
  readonly from?: { readonly text: string; readonly unit: RoughnessUnit };
}

export type RoughnessUnit = 'µm' | 'µin';

/** µm in each unit: an inch is 25.4 mm exactly. */
const IN_MICROMETRES: Readonly<Record<RoughnessUnit, number>> = { µm: 1, µin: 0.0254 };

/** Finer than this is optics, rougher than this is a sawn face, µm. */
const RANGE = { least: 0.005, most: 50 } as const;

/** The unit that goes with sizes in `size`. */
export function roughnessUnit(size: 'mm' | 'in'): RoughnessUnit {
  return size === 'in' ? 'µin' : 'µm';
}

/** Ra in µm, or undefined: with the problem where something is typed that is none. */
export function readRoughness(
  typed: TypedRoughness | undefined,
  problems: ProblemList,
): number | undefined {
  if (typed === undefined || typed.text.trim() === '') return undefined;
  const read = readNumber(typed.text);
  if (!read.ok) {
    problems.wrong(fieldKey.finish(), read.message);
    return undefined;
  }
  const roughness = read.value * IN_MICROMETRES[typed.unit];
  if (roughness >= RANGE.least && roughness <= RANGE.most) return roughness;
  problems.wrong(fieldKey.finish(), 'No usual Ra: check the figure and the unit');
  return undefined;
}

/**
 * The same roughness in another unit; back in its own it is what was typed, idle zeros too. What is no
 * number keeps its text.
 */
export function roughnessInUnit(typed: TypedRoughness, unit: RoughnessUnit): TypedRoughness {
  if (unit === typed.unit) return typed;
  const { text, unit: own } = asFirstTyped(typed, converts);
  if (unit === own) return { text, unit };
  const converted = converts(text, own, unit);
  return converted === undefined
    ? { text, unit }
    : { text: converted, unit, from: { text, unit: own } };
}

function converts(text: string, own: RoughnessUnit, unit: RoughnessUnit): string | undefined {
  const read = readNumber(text);
  if (!read.ok) return undefined;
  return lengthText((read.value * IN_MICROMETRES[own]) / IN_MICROMETRES[unit], 5);
}
