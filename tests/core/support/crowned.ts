import type { Reading } from '../../../src/core/readings/reading';

/**
 * The readings on the right face, or over it, as they would be with its middle `rise` µm out over its
 * ends along z, the ends lying `half` mm from the middle of the block of 90 mm. Written apart from the
 * core: each kind of reading sees what stands under its own plunger and nose.
 */
export function crowned(readings: readonly Reading[], rise: number, half = 40): readonly Reading[] {
  const at = (z: number) => rise * (1 - (z / half) ** 2);
  const above = (height: number) => at(height - 45);
  return readings.map((reading) => {
    if (reading.kind === 'micrometer') {
      return { ...reading, departure: reading.departure + at(reading.point.z) };
    }
    if (reading.kind === 'assumed parallel' || reading.face !== 'right') return reading;
    if (reading.kind === 'column') {
      return { ...reading, value: reading.value + above(reading.height) };
    }
    if (reading.kind !== 'nose comparator')
      return { ...reading, value: reading.value + at(reading.point.z) };
    const { indicatorHeight, noseHeight } = reading;
    return { ...reading, value: reading.value + above(indicatorHeight) - above(noseHeight) };
  });
}
