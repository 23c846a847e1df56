import type { Face } from '../../../src/core/part/faces';
import type { EntryUnits } from '../../../src/entry/new-setup';
import type {
  AssumptionSetup,
  ColumnSetup,
  MicrometerSetup,
  NoseComparatorSetup,
} from '../../../src/entry/setup-entry';
import type { TypedLength } from '../../../src/entry/typed-length';

const METRIC: EntryUnits = { size: 'mm', reading: 'µm' };

/** The comparator 'nose', nose at 6 and indicator at 80 mm: 34 µm on the right, 31 on the left. */
export function noseSetup(
  typed: Partial<Record<'nose' | 'indicator' | 'right' | 'left', string>> = {},
  units = METRIC,
  base: Face = 'bottom',
): NoseComparatorSetup {
  const { nose = '6', indicator = '80', right = '34', left = '31' } = typed;
  return {
    kind: 'nose comparator',
    id: 'nose',
    faces: ['right', 'left'],
    base,
    noseHeight: { text: nose, unit: units.size },
    indicatorHeight: { text: indicator, unit: units.size },
    placings: [
      { id: 'on right', face: 'right', reading: { text: right, unit: units.reading } },
      { id: 'on left', face: 'left', reading: { text: left, unit: units.reading } },
    ],
  };
}

type Two = readonly [string, string];

/** The column 'column', at 10 and 80 mm: 4 and 31 µm on the right, 7 and 24 on the left. */
export function columnSetup(
  typed: Partial<Record<'heights' | 'right' | 'left', Two>> = {},
  units = METRIC,
): ColumnSetup {
  const { heights = ['10', '80'], right = ['4', '31'], left = ['7', '24'] } = typed;
  const shown = ([low, high]: Two): Record<string, TypedLength> => ({
    low: { text: low, unit: units.reading },
    high: { text: high, unit: units.reading },
  });
  return {
    kind: 'column',
    id: 'column',
    faces: ['right', 'left'],
    base: 'bottom',
    heights: [
      { id: 'low', height: { text: heights[0], unit: units.size } },
      { id: 'high', height: { text: heights[1], unit: units.size } },
    ],
    placings: [
      { id: 'on right', face: 'right', readings: shown(right) },
      { id: 'on left', face: 'left', readings: shown(left) },
    ],
  };
}

/** A micrometer over `face` and its opposite; each place as up, across and thickness. */
export function micrometerSetup(
  places: readonly (readonly [up: string, across: string, thickness: string])[],
  faces: readonly [Face, Face] = ['right', 'left'],
  unit: 'mm' | 'in' = 'mm',
): MicrometerSetup {
  return {
    kind: 'micrometer',
    id: 'micrometer',
    faces,
    places: places.map(([up, across, thickness], index) => ({
      id: `place ${index + 1}`,
      up: { text: up, unit },
      across: { text: across, unit },
      thickness: { text: thickness, unit },
    })),
  };
}

/** The word that right and left are parallel. */
export function assumption(within: TypedLength): AssumptionSetup {
  return { kind: 'assumed parallel', id: 'word', faces: ['right', 'left'], within };
}
