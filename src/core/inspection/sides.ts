import type { Adjustment, Estimate } from '../adjustment/adjustment';
import { once } from '../once';
import { type Block, depthBehind } from '../part/block';
import { outOfSquare, taper } from '../part/face-errors';
import { type Face, oppositeFace } from '../part/faces';
import { scaled, sum } from '../part/linear-form';
import type { Kit } from '../readings/kit';
import type { ColumnReading, NoseComparatorReading, Reading } from '../readings/reading';
import { candidatesFor } from './candidates';
import type { Remedy } from './candidates/candidate';
import { remediesFor } from './remedies';

/** What the readings say of two opposite faces that stand on one base. */
export interface SidesAnswer {
  readonly base: Face;
  readonly faces: readonly [Face, Face];
  /** Height of the part above the base, mm. */
  readonly height: number;
  /** Out-of-square of each face, µm/mm, positive leaning outward going away from the base; undefined where not fixed. */
  readonly outOfSquare: readonly [Estimate | undefined, Estimate | undefined];
  /** The greatest span of heights, mm, over which the readings compared the sides. */
  readonly reach: number;
  /** What the first side shows more than the second over the reach, µm: the 'total difference'. Half of it is 'per side'. */
  readonly difference: Estimate | undefined;
  /** Growth of the thickness per mm going away from the base, µm/mm. */
  readonly taper: Estimate | undefined;
  /** True where the answer leans on somebody's word that the faces are parallel. */
  readonly assumed: boolean;
  /** What would fix the out-of-square where it is not fixed: any one set will do. Worked out when first asked for. */
  readonly remedies: readonly (readonly Remedy[])[];
}

/** The answer for each pair of opposite faces that was read from one base. */
export function sidesAnswers(
  readings: readonly Reading[],
  block: Block,
  kit: Kit,
  adjustment: Adjustment,
): readonly SidesAnswer[] {
  return pairsRead(readings).map(([face, base]) => {
    const other = oppositeFace(face);
    const forms = [outOfSquare(face, base), outOfSquare(other, base)] as const;
    const reach = reachOf(readings, face, base);
    const estimates = [adjustment.estimate(forms[0]), adjustment.estimate(forms[1])] as const;
    const fixed = estimates[0] !== undefined && estimates[1] !== undefined;
    const remedies = once(() => {
      const candidates = candidatesFor({ face, datum: base }, readings, block);
      return remediesFor(forms, readings, candidates, block, kit);
    });
    return {
      base,
      faces: [face, other],
      height: depthBehind(block, base),
      outOfSquare: estimates,
      reach,
      difference:
        reach === 0
          ? undefined
          : adjustment.estimate(scaled(sum(forms[0], scaled(forms[1], -1)), reach)),
      taper: adjustment.estimate(taper(face, oppositeFace(base))),
      assumed: estimates.some((estimate) => leansOnAssumption(estimate, readings)),
      get remedies() {
        return fixed ? [] : remedies();
      },
    };
  });
}

function leansOnAssumption(estimate: Estimate | undefined, readings: readonly Reading[]): boolean {
  return readings.some(
    ({ kind, id }) => kind === 'assumed parallel' && estimate?.restsOn.has(id) === true,
  );
}

function isStanding(reading: Reading): reading is NoseComparatorReading | ColumnReading {
  return reading.kind === 'nose comparator' || reading.kind === 'column';
}

/** Each pair of opposite faces with its base, once, named by the face that was read first. */
function pairsRead(readings: readonly Reading[]): readonly (readonly [Face, Face])[] {
  const pairs: (readonly [Face, Face])[] = [];
  for (const reading of readings.filter(isStanding)) {
    const known = pairs.some(
      ([face, base]) =>
        base === reading.base && (face === reading.face || face === oppositeFace(reading.face)),
    );
    if (!known) pairs.push([reading.face, reading.base]);
  }
  return pairs;
}

/** The greatest lever on this pair, mm: of a setting, or from the lowest height of a column to the highest. */
function reachOf(readings: readonly Reading[], face: Face, base: Face): number {
  const onPair = readings.filter(
    (reading): reading is NoseComparatorReading | ColumnReading =>
      isStanding(reading) &&
      reading.base === base &&
      (reading.face === face || reading.face === oppositeFace(face)),
  );
  const heights = onPair.flatMap((reading) => (reading.kind === 'column' ? [reading.height] : []));
  const levers = onPair.flatMap((reading) =>
    reading.kind === 'column' ? [] : [Math.abs(reading.indicatorHeight - reading.noseHeight)],
  );
  return Math.max(
    0,
    ...levers,
    heights.length > 0 ? Math.max(...heights) - Math.min(...heights) : 0,
  );
}
