import { DEFAULT_KIT, type Kit } from '../core/readings/kit';
import type { LengthUnit } from '../core/units/length';
import { fieldKey } from './field-keys';
import { ProblemList, type Problems } from './problems';
import { type Limits, readLength } from './read-length';
import type { TypedLength } from './typed-length';

/** What is known of the instruments and the plate, as typed. */
export type KitEntry = Readonly<Record<keyof Kit, TypedLength>>;

/** Heights are kept in mm, errors in µm. */
const KIT_UNITS: Readonly<Record<keyof Kit, LengthUnit>> = {
  indicatorResolution: 'µm',
  indicatorError: 'µm',
  seating: 'µm',
  plate: 'µm',
  micrometerResolution: 'µm',
  micrometerError: 'µm',
  heightSetting: 'mm',
};

export const KIT_ITEMS = Object.keys(KIT_UNITS) as readonly (keyof Kit)[];

/** The defaults, as if typed. */
export function defaultKit(): KitEntry {
  return Object.fromEntries(
    KIT_ITEMS.map((item) => [item, { text: String(DEFAULT_KIT[item]), unit: KIT_UNITS[item] }]),
  ) as KitEntry;
}

/** A resolution of nothing would claim perfect knowledge; the rest may be 0. */
const ABOVE_NOTHING: readonly (keyof Kit)[] = ['indicatorResolution', 'micrometerResolution'];

function limitsOf(item: keyof Kit): Limits {
  return {
    least: ABOVE_NOTHING.includes(item) ? 0.001 : 0,
    most: item === 'heightSetting' ? 10_000 : 1000,
    tooSmall: ABOVE_NOTHING.includes(item) ? 'Above 0' : 'Not below 0',
    tooLarge: 'Larger than any usable kit. Check the unit',
  };
}

/** The kit, or undefined with what is wrong. */
export function readKit(entry: KitEntry): {
  readonly kit: Kit | undefined;
  readonly problems: Problems;
} {
  const problems = new ProblemList();
  const items = KIT_ITEMS.map((item) => {
    const key = fieldKey.kit(item);
    const read = readLength(entry[item], key, problems, limitsOf(item), 'Needed to tell the doubt');
    return [item, (read ?? 0) / (item === 'heightSetting' ? 1000 : 1)] as const;
  });
  const complete = problems.all.size === 0;
  return {
    kit: complete ? (Object.fromEntries(items) as unknown as Kit) : undefined,
    problems: problems.all,
  };
}
