import { groupedBy } from '../../grouped-by';
import { type Face, oppositeFace } from '../../part/faces';
import type { ColumnReading, NoseComparatorReading } from '../../readings/reading';

/** For each group, such as a setting, that has read only one of the two sides: a reading of it, and the other side. */
export function missingSides<R extends NoseComparatorReading | ColumnReading>(
  face: Face,
  base: Face,
  readings: readonly R[],
  groupOf: (reading: R) => string,
): readonly (readonly [R, Face])[] {
  const sides = [face, oppositeFace(face)];
  const own = readings.filter((one) => one.base === base && sides.includes(one.face));
  const groups = groupedBy(own, groupOf);
  return [...groups.values()].flatMap((group) => {
    const missing = sides.filter((side) => group.every((reading) => reading.face !== side));
    const [first] = group;
    return missing[0] !== undefined && first !== undefined ? [[first, missing[0]] as const] : [];
  });
}
