import { groupedBy } from '../grouped-by';
import { type Block, depthBehind } from '../part/block';
import { withoutOutstanding } from '../statistics/outstanding';
import { chooseSpread, ENOUGH_DEGREES, repeatability, type Spread } from '../statistics/pooled';
import { fromResolution } from './distributions';
import { type Kit, kitFor } from './kit';
import type { ColumnReading, NoseComparatorReading, Reading } from './reading';
import { sitReading } from './unknowns';

/**
 * The kit to judge single readings by: the stated seating, unless enough repeats know it better. A
 * few bad repeats widen the doubt of the results, but must not make a blunder look usual: where one
 * repeat stands out from all the others, it has no say in the spread that it is judged by.
 */
export function kitForChecks(kit: Kit, readings: readonly Reading[], block: Block): Kit {
  const observed = repeatability(withoutOutstanding(liftsOf(readings, block, kit).map(heights)));
  if (observed === undefined || observed.degreesOfFreedom < ENOUGH_DEGREES) return kit;
  return withSeating(kit, observed);
}

/** The kit with the seating that the repeats show, once they know it well enough or it is surely worse. */
export function withObservedSeating(kit: Kit, readings: readonly Reading[], block: Block): Kit {
  const groups = liftsOf(readings, block, kit);
  return withSeating(kit, repeatability(groups.map(heights)), addedByReading(groups));
}

/** Two repeats that lie further apart than the stated seating explains. */
export interface FarRepeats {
  /** Ids of the two readings, in their order; of traverses, of how their placings sat. */
  readonly readings: readonly [string, string];
  /** How differently the block sat, µm at its edge. */
  readonly apart: number;
}

/** The two that are furthest apart, where too few repeats to know the seating have widened the doubt. */
export function farRepeats(
  kit: Kit,
  readings: readonly Reading[],
  block: Block,
): FarRepeats | undefined {
  const { seating, seatingDegrees } = withObservedSeating(kit, readings, block);
  if (seating <= kit.seating || seatingDegrees >= ENOUGH_DEGREES) return undefined;
  const pairs = liftsOf(readings, block, kit).flatMap((group) => furthestIn(group) ?? []);
  return pairs.sort((a, b) => b.apart - a.apart)[0];
}

function furthestIn(group: readonly Lift[]): FarRepeats | undefined {
  const pairs = group.flatMap((one, index) =>
    group.slice(index + 1).map((other) => ({
      readings: [one.reading, other.reading] as const,
      apart: Math.abs(other.lift - one.lift),
    })),
  );
  return pairs.sort((a, b) => b.apart - a.apart)[0];
}

function withSeating(kit: Kit, observed: Spread | undefined, ofReading = 0): Kit {
  const stated = { standard: kit.seating, degreesOfFreedom: kit.seatingDegrees };
  const chosen = chooseSpread(stated, observed, ofReading);
  return { ...kit, seating: chosen.standard, seatingDegrees: chosen.degreesOfFreedom };
}

/**
 * How far the edge of the block lifts from one seating to the next, in groups of repeats: readings of
 * one setting on one face and base are repeats of each other, and so are traverses of one column.
 */
function liftsOf(
  readings: readonly Reading[],
  block: Block,
  kit: Kit,
): readonly (readonly Lift[])[] {
  const lifts = [...noseLifts(readings, block, kit), ...traverseLifts(readings, block, kit)];
  return [...groupedBy(lifts, ({ group }) => group).values()];
}

interface Lift {
  readonly reading: string;
  readonly group: string;
  /** µm at the edge of the block, from a zero that the group shares. */
  readonly lift: number;
  /** What the step of the indicator adds to it: a standard deviation, µm. */
  readonly ofReading: number;
}

function heights(group: readonly Lift[]): readonly number[] {
  return group.map(({ lift }) => lift);
}

/** What the step of the indicator adds to the repeats, all groups together: a standard deviation, µm. */
function addedByReading(groups: readonly (readonly Lift[])[]): number {
  const repeats = groups.filter(({ length }) => length > 1).flat();
  const squares = repeats.reduce((total, { ofReading }) => total + ofReading ** 2, 0);
  return Math.sqrt(squares / Math.max(1, repeats.length));
}

function noseLifts(readings: readonly Reading[], block: Block, kit: Kit): readonly Lift[] {
  return (
    readings
      .filter((reading): reading is NoseComparatorReading => reading.kind === 'nose comparator')
      // Without a lever nothing is seen of the seating.
      .filter(({ indicatorHeight, noseHeight }) => indicatorHeight !== noseHeight)
      .map((reading) => {
        const { setting, face, base, value, indicatorHeight, noseHeight } = reading;
        const perReading = depthBehind(block, face) / (indicatorHeight - noseHeight);
        return {
          reading: reading.id,
          group: `${setting} ${face} ${base}`,
          lift: value * perReading,
          ofReading: stepOf(reading, kit) * Math.abs(perReading),
        };
      })
  );
}

/** What the step of its indicator adds to a reading, µm. */
function stepOf(reading: Reading, kit: Kit): number {
  return fromResolution(kitFor(reading, kit).indicatorResolution);
}

function traverseLifts(readings: readonly Reading[], block: Block, kit: Kit): readonly Lift[] {
  const onColumns = readings.filter((reading) => reading.kind === 'column');
  const placings = groupedBy(onColumns, ({ placing }) => placing);
  return [...placings.values()].flatMap((traverse) => {
    const { column, placing, face, base } = traverse[0]!;
    const slope = slopeOf(traverse);
    if (slope === undefined) return [];
    const depth = depthBehind(block, face);
    const step = stepOf(traverse[0]!, kit);
    // Only traverses of the same heights repeat each other: on a bowed side others differ anyway.
    const heights = traverse.map(({ height }) => height).sort((a, b) => a - b);
    const group = `${column} ${face} ${base} ${heights.join(' ')}`;
    const ofReading = step * slope.perReading * depth;
    return [{ reading: sitReading(placing), group, lift: slope.value * depth, ofReading }];
  });
}

/**
 * Least-squares slope of a traverse, µm/mm, and what a µm of scatter in every reading comes to in it;
 * undefined with fewer than two heights.
 */
function slopeOf(traverse: readonly ColumnReading[]) {
  const mean = traverse.reduce((total, { height }) => total + height, 0) / traverse.length;
  let above = 0;
  let below = 0;
  for (const { height, value } of traverse) {
    above += (height - mean) * value;
    below += (height - mean) ** 2;
  }
  return below > 0 ? { value: above / below, perReading: 1 / Math.sqrt(below) } : undefined;
}
