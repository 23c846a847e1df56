import fc from 'fast-check';
import type { FacePoint } from '../../../../../src/core/zones/form/points';
import type { Random } from '../../../support/random';

/** The points of a grid, row by row; row j at v = j·pitch, column i at u = i·pitch. */
export function gridPoints(
  rows: readonly (readonly number[])[],
  pitch: number,
): readonly FacePoint[] {
  return rows.flatMap((row, j) =>
    row.map((deviation, i) => ({ u: i * pitch, v: j * pitch, deviation })),
  );
}

/** Places anywhere on a face of 300 × 200 mm, with a crown of 5 µm and a scatter of 1 µm. */
export function scatteredPoints(random: Random, count: number): readonly FacePoint[] {
  return Array.from({ length: count }, () => {
    const [u, v] = [random.between(0, 300), random.between(0, 200)];
    const crown = 5 * (1 - (u / 150 - 1) ** 2 - (v / 100 - 1) ** 2);
    return { u, v, deviation: crown + random.normal() };
  });
}

/** A square grid of 10 mm with whole deviations: places on one line and ties abound. */
export function wholePoints(random: Random, count: number): readonly FacePoint[] {
  const columns = Math.ceil(Math.sqrt(count));
  return Array.from({ length: count }, (_, index) => ({
    u: 10 * (index % columns),
    v: 10 * Math.floor(index / columns),
    deviation: Math.round(2 * random.normal()),
  }));
}

/** Points of whole numbers on a small face: duplicates, places on one line and ties abound. */
export const somePoints: fc.Arbitrary<readonly FacePoint[]> = fc.array(
  fc.record({
    u: fc.integer({ min: 0, max: 4 }),
    v: fc.integer({ min: 0, max: 3 }),
    deviation: fc.integer({ min: -6, max: 6 }),
  }),
  { minLength: 1, maxLength: 10 },
);
