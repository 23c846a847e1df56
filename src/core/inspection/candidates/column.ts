import { groupedBy } from '../../grouped-by';
import { type Face, oppositeFace } from '../../part/faces';
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

/** The sides of the pair that a column has run up on one base, each once more after lifting the block. */
export function traverseAgain(face: Face, readings: readonly Reading[]): readonly Candidate[] {
  const sides = [face, oppositeFace(face)];
  const columns = readings.filter(
    (reading): reading is ColumnReading =>
      reading.kind === 'column' && sides.includes(reading.face),
  );
  const stands = groupedBy(columns, ({ column, base }) => `${column} ${base}`);
  return [...stands.values()].map((own) => {
    const { column, base } = own[0]!;
    // Of each side the seating that was read last: what was run up before it is the same again.
    const last = new Map(own.map(({ face: side, placing }) => [side, placing]));
    return {
      remedy: { kind: 'seat again and traverse', column, faces: [...last.keys()], base },
      readings: own
        .filter((reading) => last.get(reading.face) === reading.placing)
        .map((reading) => ({
          ...reading,
          id: `${REMEDY_ID} ${reading.id}`,
          placing: `${REMEDY_ID} ${reading.placing}`,
        })),
    };
  });
}
