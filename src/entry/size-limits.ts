import { AXES, type Axis } from '../core/part/faces';
import type { SizeLimits } from '../core/part/part';
import { fieldKey } from './field-keys';
import { limitSaid } from './limits';
import type { PartEntry, SizeLimitsEntry } from './part-entry';
import type { ProblemList } from './problems';
import { type Limits, type Refusal, readLength } from './read-length';
import { blank, isBlank } from './typed-length';

/** The limits of one size, empty where none were typed. */
export function sizeLimitsOf(entry: PartEntry, axis: Axis): SizeLimitsEntry {
  const { unit } = entry.size[axis];
  return entry.sizeLimits?.[axis] ?? { lower: blank(unit), upper: blank(unit) };
}

/** True where any limit has been typed. */
export function anySizeLimit(entry: PartEntry): boolean {
  return AXES.some((axis) => {
    const { lower, upper } = sizeLimitsOf(entry, axis);
    return !isBlank(lower) || !isBlank(upper);
  });
}

const DEPARTURE_MESSAGE: Refusal = (unit) =>
  `Over ${limitSaid(5, unit)} from the size: a limit is how far the size may be off, with its sign`;
const DEPARTURE: Limits = {
  least: -5000,
  most: 5000,
  tooSmall: DEPARTURE_MESSAGE,
  tooLarge: DEPARTURE_MESSAGE,
};

/** The limits that can be read, µm from the nominal size; a size without limits is left out. */
export function readSizeLimits(
  entry: PartEntry,
  problems: ProblemList,
): Readonly<Partial<Record<Axis, SizeLimits>>> {
  return Object.fromEntries(
    AXES.flatMap((axis) => {
      const typed = sizeLimitsOf(entry, axis);
      const lower = readLength(typed.lower, fieldKey.lowerLimit(axis), problems, DEPARTURE);
      const upper = readLength(typed.upper, fieldKey.upperLimit(axis), problems, DEPARTURE);
      if (lower !== undefined && upper !== undefined && lower >= upper) {
        problems.wrong(fieldKey.upperLimit(axis), 'Not above the lower limit. Check the signs');
        return [];
      }
      const limits = {
        ...(lower !== undefined && { lower }),
        ...(upper !== undefined && { upper }),
      };
      return Object.keys(limits).length === 0 ? [] : [[axis, limits] as const];
    }),
  );
}
