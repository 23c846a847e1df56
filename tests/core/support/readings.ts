import type { Triple } from '../../../src/core/part/block';
import type { Face } from '../../../src/core/part/faces';
import type {
  ColumnReading,
  MicrometerReading,
  NoseComparatorReading,
  ParallelAssumption,
} from '../../../src/core/readings/reading';
import { CENTRE } from './worked-block';

interface NosePlace {
  readonly setting?: string;
  readonly base?: Face;
  readonly low?: number;
  readonly high?: number;
}

/** A nose comparator reading, µm; by default with the nose at 6 and the indicator at 80 mm. */
export function nose(face: Face, value: number, place: NosePlace = {}): NoseComparatorReading {
  const { setting = 'comparator', base = 'bottom', low = 6, high = 80 } = place;
  return {
    kind: 'nose comparator',
    id: `${setting}: ${face} on ${base} from ${low} to ${high}`,
    setting,
    face,
    base,
    noseHeight: low,
    indicatorHeight: high,
    value,
  };
}

/** The readings of one column traverse, by height in mm; one placing for each face and base. */
export function traverse(
  face: Face,
  values: Readonly<Record<number, number>>,
  { column = 'column', base = 'bottom' as Face } = {},
): readonly ColumnReading[] {
  const placing = `${face} to ${column} on ${base}`;
  return Object.entries(values).map(([height, value]) => ({
    kind: 'column',
    id: `${placing} at ${height}`,
    column,
    placing,
    face,
    base,
    height: Number(height),
    value,
  }));
}

/** A micrometer reading over `face` and its opposite, µm from the drawing's size. */
export function micrometer(
  face: Face,
  place: Partial<Triple>,
  departure: number,
): MicrometerReading {
  const point = { ...CENTRE, ...place };
  const id = `micrometer over ${face} at ${point.x} ${point.y} ${point.z}`;
  return { kind: 'micrometer', id, face, point, departure };
}

/** The word that `face` and its opposite are parallel, within 1 µm by default. */
export function assumedParallel(face: Face, within = 1): ParallelAssumption {
  return { kind: 'assumed parallel', id: `${face} assumed parallel`, face, within };
}
