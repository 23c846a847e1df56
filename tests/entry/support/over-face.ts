import type { Face } from '../../../src/core/part/faces';
import type { OverFaceSetup } from '../../../src/entry/setup-entry';
import { micro } from './typed';

/** An indicator over the first of `faces`; each place as up, across and reading. */
export function overFaceSetup(
  places: readonly (readonly [up: string, across: string, reading: string])[],
  kind: OverFaceSetup['kind'] = 'over the top',
  faces: readonly [Face, Face] = ['top', 'bottom'],
  unit: 'mm' | 'in' = 'mm',
): OverFaceSetup {
  return {
    kind,
    id: 'over',
    faces,
    places: places.map(([up, across, reading], index) => ({
      id: `spot ${index + 1}`,
      up: { text: up, unit },
      across: { text: across, unit },
      reading: micro(reading),
    })),
  };
}
