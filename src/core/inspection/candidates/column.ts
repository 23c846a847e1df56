import type { Face } from '../../part/faces';
import type { ColumnReading, Reading } from '../../readings/reading';
import { type Candidate, REMEDY_ID } from './candidate';
import { missingSides } from './missing-sides';

/** Columns that have read only one of the two sides. */
export function traverses(
  face: Face,
  base: Face,
  readings: readonly Reading[],
): readonly Candidate[] {
  const columns = readings.filter((reading): reading is ColumnReading => reading.kind === 'column');
  return missingSides(face, base, columns, (reading) => reading.column).map(
    ([reading, missing]) => ({
      remedy: { kind: 'traverse the other side', column: reading.column, face: missing },
      readings: columns
        .filter((other) => other.placing === reading.placing)
        .map((other) => ({
          ...other,
          id: `${REMEDY_ID} ${other.id}`,
          placing: `${REMEDY_ID} placing`,
          face: missing,
        })),
    }),
  );
}
