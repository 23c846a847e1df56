import { fillWithNormals } from '../statistics/normal-pairs';
import type { Random } from '../statistics/random';
import type { FormPoint } from '../zones/zone-with-form';

/** Of a column beside those before it: less than this is rounding. */
const NO_SPREAD = 1e-9;

/**
 * A draw of what the doubt of the readings puts on the residuals at `points`, µm, in their order:
 * fresh noise for each reading, with the group's least-squares line or plane taken out of it again,
 * as it was taken out of the readings.
 *
 * It is drawn apart from the plane. With one standard uncertainty for all readings of a group, its
 * residuals and its fitted plane are uncorrelated, and so independent where the noise is normal
 * (Cochran; Searle, Linear Models, 1971, 3.5; both from memory). The adjustment learns nothing else
 * of the group than that plane: its other unknowns only say whose the slopes are.
 */
export function noiseOf(
  points: readonly FormPoint[],
  random: Random,
): (into: Float64Array) => void {
  const standards = Float64Array.from(points, ({ standard }) => standard);
  const groups = groupsOf(points);
  const columns = groups.flatMap(columnsOf);
  return (into) => {
    fillWithNormals(into, random);
    for (let i = 0; i < standards.length; i += 1) into[i] = into[i]! * standards[i]!;
    for (const column of columns) takeOut(column, into);
  };
}

/** A direction of the readings of one group, of length 1: `values` at the places `at` in the list. */
interface Column {
  readonly at: Int32Array;
  readonly values: Float64Array;
}

function takeOut({ at, values }: Column, from: Float64Array): void {
  let along = 0;
  for (let i = 0; i < at.length; i += 1) along += values[i]! * from[at[i]!]!;
  for (let i = 0; i < at.length; i += 1) from[at[i]!] = from[at[i]!]! - along * values[i]!;
}

interface Group {
  readonly at: Int32Array;
  readonly points: readonly FormPoint[];
}

function groupsOf(points: readonly FormPoint[]): readonly Group[] {
  const names = [...new Set(points.map(({ group }) => group))];
  return names.map((name) => {
    const at = points.flatMap(({ group }, index) => (group === name ? [index] : []));
    return { at: Int32Array.from(at), points: at.map((index) => points[index]!) };
  });
}

/**
 * What a line or plane through the group can be, as columns square to each other: the height, then
 * a slope along each part where the places spread along it. Gram and Schmidt, twice.
 */
function columnsOf({ at, points }: Group): readonly Column[] {
  const inGroup = Int32Array.from(at, (_, index) => index);
  const found: Column[] = [];
  const add = (values: Float64Array) => {
    const before = Math.hypot(...values);
    for (let round = 0; round < 2; round += 1) {
      for (const column of found) takeOut({ at: inGroup, values: column.values }, values);
    }
    const length = Math.hypot(...values);
    if (length <= NO_SPREAD * before) return;
    found.push({ at, values: values.map((value) => value / length) });
  };
  add(new Float64Array(points.length).fill(1));
  for (let part = 0; part < points[0]!.shares.length; part += 1) {
    add(Float64Array.from(points, ({ shares }) => shares[part]!));
  }
  return found;
}
