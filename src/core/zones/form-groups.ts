import { groupedBy } from '../grouped-by';
import { type Block, depthBehind } from '../part/block';
import { areNeighbours, axesInFace } from '../part/faces';
import { kindOf, type Requirement } from '../part/requirement';
import { indicatorDoubt, micrometerDoubt } from '../readings/doubts';
import { combined } from '../readings/equation';
import { type Kit, kitFor } from '../readings/kit';
import type {
  ColumnReading,
  MicrometerReading,
  OverTheTopReading,
  Reading,
} from '../readings/reading';
import { leverMovement } from '../statistics/lever-angle';
import { leastSquaresPlane } from './form/flatness';
import { leastSquaresLine } from './form/straightness';

/** Readings that were held against one least-squares line or plane. */
export interface FormGroup {
  readonly name: string;
  /** Places from the face's middle along each part of the zone, mm. */
  readonly places: readonly (readonly number[])[];
  /** Reading less line or plane, µm, + where there is more material. */
  readonly residuals: Float64Array;
  /** Standard uncertainty of each reading by itself, µm. */
  readonly standard: number;
  /** Numbers that the line or plane took from the readings: 2 or 3. */
  readonly fitted: number;
}

/** Fewer distinct places than these are met by a line, or a plane, in full. */
const PLACES_ON_A_LINE = 3;
const PLACES_ON_A_FACE = 4;

type Pair = Pick<Requirement, 'face' | 'datum'>;

/**
 * The readings that show form that counts for `requirement`; none where nothing does.
 *
 * Squareness: traverses of the face, the block standing on the datum, with three heights or more.
 * Each placing's own line takes out how the block sat and how the column leans; the column's own
 * straightness stays in. Parallelism: indicator readings over the face, and micrometer readings, at
 * four places or more that are not on one line. A micrometer shows the form of both faces as one,
 * which is taken as the face's. An indicator over the datum shows the datum's form, which ISO 1101
 * does not charge to the face.
 */
export function formGroupsOf(
  requirement: Pair,
  readings: readonly Reading[],
  block: Block,
  kit: Kit,
): readonly FormGroup[] {
  return kindOf(requirement) === 'squareness'
    ? traverses(requirement, readings, block, kit)
    : maps(requirement, readings, kit);
}

function traverses(
  { face, datum }: Pair,
  readings: readonly Reading[],
  block: Block,
  kit: Kit,
): readonly FormGroup[] {
  const middle = depthBehind(block, datum) / 2;
  const own = readings.filter(
    (reading): reading is ColumnReading =>
      reading.kind === 'column' && reading.face === face && reading.base === datum,
  );
  return [...groupedBy(own, ({ placing }) => placing)].flatMap(([name, traverse]) => {
    if (new Set(traverse.map(({ height }) => height)).size < PLACES_ON_A_LINE) return [];
    // One traverse is read with one indicator.
    const ofIts = kitFor(traverse[0]!, kit);
    const points = traverse.map(({ height, value }) => ({
      u: height - middle,
      deviation: leverMovement(value, ofIts.leverAngle),
    }));
    const { residuals } = leastSquaresLine(points);
    const standard = combined(indicatorDoubt(ofIts));
    return [{ name, places: points.map(({ u }) => [u]), residuals, standard, fitted: 2 }];
  });
}

/** A reading of the thickness behind a face, but for what is the same all over the map. */
type ThicknessReading = OverTheTopReading | MicrometerReading;

function maps({ face }: Pair, readings: readonly Reading[], kit: Kit): readonly FormGroup[] {
  const [alongU, alongV] = axesInFace(face);
  const own = readings.filter((reading): reading is ThicknessReading =>
    reading.kind === 'micrometer'
      ? !areNeighbours(reading.face, face)
      : reading.kind === 'over the top' && reading.face === face,
  );
  // All micrometer readings over a pair of faces start from one size: they are one map.
  const named = groupedBy(own, (reading) =>
    reading.kind === 'micrometer' ? reading.kind : `${reading.kind} ${reading.placing}`,
  );
  return [...named].flatMap(([name, map]) => {
    const points = map.map((reading) => ({
      u: reading.point[alongU],
      v: reading.point[alongV],
      deviation: departureOf(reading, kit),
    }));
    if (new Set(points.map(({ u, v }) => `${u} ${v}`)).size < PLACES_ON_A_FACE) return [];
    const { residuals, spread } = leastSquaresPlane(points);
    if (spread !== 'face') return [];
    const standard = Math.max(...map.map((reading) => standardOf(reading, kit)));
    return [{ name, places: points.map(({ u, v }) => [u, v]), residuals, standard, fitted: 3 }];
  });
}

function departureOf(reading: ThicknessReading, kit: Kit): number {
  if (reading.kind === 'micrometer') return reading.departure;
  return leverMovement(reading.value, kitFor(reading, kit).leverAngle);
}

/** Standard uncertainty of the reading by itself, µm: where a map was read with several, that of the worst stands for all. */
function standardOf(reading: ThicknessReading, kit: Kit): number {
  const own = kitFor(reading, kit);
  return combined(reading.kind === 'micrometer' ? micrometerDoubt(own) : indicatorDoubt(own));
}
