import { fieldKey } from './field-keys';
import { readNumber } from './number';
import type { ProblemList } from './problems';
import { lengthText } from './typed-length';

/** A roughness Ra as typed. */
export interface TypedRoughness {
  readonly text: string;
  readonly unit: RoughnessUnit;
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

/** The same roughness in another unit; what is no number keeps its text. */
export function roughnessInUnit(typed: TypedRoughness, unit: RoughnessUnit): TypedRoughness {
  const read = readNumber(typed.text);
  if (unit === typed.unit || !read.ok) return { ...typed, unit };
  const value = (read.value * IN_MICROMETRES[typed.unit]) / IN_MICROMETRES[unit];
  return { text: lengthText(value, 5), unit };
}
