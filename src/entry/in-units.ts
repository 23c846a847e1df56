import { AXES } from '../core/part/faces';
import type { EntryUnits } from './new-setup';
import type { FlatnessEntry, PartEntry } from './part-entry';
import { roughnessInUnit, roughnessUnit } from './roughness';
import type { SetupEntry } from './setup-entry';
import { sizeLimitsOf } from './size-limits';
import { inUnit, smallUnit, type TypedLength } from './typed-length';

/** The same part with its sizes and tolerances in another unit. */
export function partInUnit(entry: PartEntry, unit: 'mm' | 'in'): PartEntry {
  const { x, y, z } = entry.size;
  return {
    ...entry,
    size: { x: inUnit(x, unit), y: inUnit(y, unit), z: inUnit(z, unit) },
    requirements: entry.requirements.map((one) => toleranceInUnit(one, unit)),
    ...(entry.flatness && { flatness: entry.flatness.map((one) => toleranceInUnit(one, unit)) }),
    ...(entry.sizeLimits && { sizeLimits: limitsInUnit(entry, unit) }),
    ...(entry.finish && { finish: roughnessInUnit(entry.finish, roughnessUnit(unit)) }),
  };
}

function toleranceInUnit<R extends FlatnessEntry>(asked: R, unit: 'mm' | 'in'): R {
  return { ...asked, tolerance: inUnit(asked.tolerance, unit) };
}

function limitsInUnit(entry: PartEntry, unit: 'mm' | 'in'): NonNullable<PartEntry['sizeLimits']> {
  const limits = AXES.map((axis) => {
    const { lower, upper } = sizeLimitsOf(entry, axis);
    return [axis, { lower: inUnit(lower, unit), upper: inUnit(upper, unit) }] as const;
  });
  return Object.fromEntries(limits);
}

/** The same setup with everything typed in other units. */
export function setupInUnits(setup: SetupEntry, units: EntryUnits): SetupEntry {
  const size = (typed: TypedLength) => inUnit(typed, units.size);
  const reading = (typed: TypedLength) => inUnit(typed, units.reading);
  switch (setup.kind) {
    case 'nose comparator':
      return {
        ...setup,
        noseHeight: size(setup.noseHeight),
        indicatorHeight: size(setup.indicatorHeight),
        placings: setup.placings.map((placing) => ({
          ...placing,
          reading: reading(placing.reading),
        })),
      };
    case 'column':
      return {
        ...setup,
        heights: setup.heights.map((row) => ({ ...row, height: size(row.height) })),
        placings: setup.placings.map((placing) => ({
          ...placing,
          readings: Object.fromEntries(
            Object.entries(placing.readings).map(([id, typed]) => [id, reading(typed)]),
          ),
        })),
      };
    case 'micrometer':
      return {
        ...setup,
        places: setup.places.map((place) => ({
          ...place,
          up: size(place.up),
          across: size(place.across),
          thickness: size(place.thickness),
        })),
      };
    case 'over the top':
    case 'face map':
      return {
        ...setup,
        places: setup.places.map((place) => ({
          ...place,
          up: size(place.up),
          across: size(place.across),
          reading: reading(place.reading),
        })),
      };
    case 'assumed parallel':
      return { ...setup, within: inUnit(setup.within, smallUnit(units.size)) };
  }
}
