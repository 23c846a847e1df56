import { type Block, depthBehind } from '../part/block';
import { withoutOutstanding } from '../statistics/outstanding';
import { chooseSpread, ENOUGH_DEGREES, repeatability, type Spread } from '../statistics/pooled';
import type { Kit } from './kit';
import type { ColumnReading, NoseComparatorReading, Reading } from './reading';

/**
 * How far the edge of the block lifts from one seating to the next, as readings repeated after
 * lifting show it, in µm like `Kit.seating`; undefined where nothing was repeated. Readings of one
 * setting on one face and base are repeats of each other, and so are traverses of one column.
 */
function observedSeating(readings: readonly Reading[], block: Block): Spread | undefined {
  return repeatability(liftsOf(readings, block));
}

/**
 * The kit to judge single readings by: the stated seating, unless enough repeats know it better. A
 * few bad repeats widen the doubt of the results, but must not make a blunder look usual: where one
 * repeat stands out from all the others, it has no say in the spread that it is judged by.
 */
export function kitForChecks(kit: Kit, readings: readonly Reading[], block: Block): Kit {
  const observed = repeatability(withoutOutstanding(liftsOf(readings, block)));
  if (observed === undefined || observed.degreesOfFreedom < ENOUGH_DEGREES) return kit;
  return withSeating(kit, observed);
}

/** The kit with the seating that the repeats show, once they know it well enough or it is surely worse. */
export function withObservedSeating(kit: Kit, readings: readonly Reading[], block: Block): Kit {
  return withSeating(kit, observedSeating(readings, block));
}

function withSeating(kit: Kit, observed: Spread | undefined): Kit {
  const stated = { standard: kit.seating, degreesOfFreedom: kit.seatingDegrees };
  const chosen = chooseSpread(stated, observed);
  return { ...kit, seating: chosen.standard, seatingDegrees: chosen.degreesOfFreedom };
}

/** Lifts in groups of repeats, µm at the edge of the block, each group from a zero of its own. */
function liftsOf(readings: readonly Reading[], block: Block): readonly (readonly number[])[] {
  const groups = new Map<string, number[]>();
  for (const { group, lift } of [
    ...noseLifts(readings, block),
    ...traverseLifts(readings, block),
  ]) {
    groups.set(group, [...(groups.get(group) ?? []), lift]);
  }
  return [...groups.values()];
}

interface Lift {
  readonly group: string;
  /** µm at the edge of the block, from a zero that the group shares. */
  readonly lift: number;
}

function noseLifts(readings: readonly Reading[], block: Block): readonly Lift[] {
  return (
    readings
      .filter((reading): reading is NoseComparatorReading => reading.kind === 'nose comparator')
      // Without a lever nothing is seen of the seating.
      .filter(({ indicatorHeight, noseHeight }) => indicatorHeight !== noseHeight)
      .map(({ setting, face, base, value, indicatorHeight, noseHeight }) => ({
        group: `${setting} ${face} ${base}`,
        lift: (value / (indicatorHeight - noseHeight)) * depthBehind(block, face),
      }))
  );
}

function traverseLifts(readings: readonly Reading[], block: Block): readonly Lift[] {
  const placings = new Map<string, ColumnReading[]>();
  for (const reading of readings) {
    if (reading.kind !== 'column') continue;
    placings.set(reading.placing, [...(placings.get(reading.placing) ?? []), reading]);
  }
  return [...placings.values()].flatMap((traverse) => {
    const { column, face, base } = traverse[0]!;
    const slope = slopeOf(traverse);
    if (slope === undefined) return [];
    // Only traverses of the same heights repeat each other: on a bowed side others differ anyway.
    const heights = traverse.map(({ height }) => height).sort((a, b) => a - b);
    const group = `${column} ${face} ${base} ${heights.join(' ')}`;
    return [{ group, lift: slope * depthBehind(block, face) }];
  });
}

/** Least-squares slope of a traverse, µm/mm; undefined with fewer than two heights. */
function slopeOf(traverse: readonly ColumnReading[]): number | undefined {
  const mean = traverse.reduce((total, { height }) => total + height, 0) / traverse.length;
  let above = 0;
  let below = 0;
  for (const { height, value } of traverse) {
    above += (height - mean) * value;
    below += (height - mean) ** 2;
  }
  return below > 0 ? above / below : undefined;
}
