import { describe, expect, it } from 'vitest';
import { adjust } from '../../../src/core/adjustment/adjustment';
import { inspect } from '../../../src/core/inspection/inspect';
import { outOfSquare } from '../../../src/core/part/face-errors';
import { equationsOf } from '../../../src/core/readings/equations-of';
import { DEFAULT_KIT, type Kit } from '../../../src/core/readings/kit';
import type { Reading } from '../../../src/core/readings/reading';
import { farRepeats, kitForChecks, withObservedSeating } from '../../../src/core/readings/repeats';
import { sitReading } from '../../../src/core/readings/unknowns';
import { COVERAGE } from '../../../src/core/statistics/coverage';
import { coverageFactor } from '../../../src/core/statistics/effective-degrees';
import { T_FACTORS } from '../statistics/reference/t-factors';
import { expectClose } from '../support/close';
import { known } from '../support/known';
import { assumedParallel, nose, traverse } from '../support/readings';
import { again } from '../support/repeated-inspection';
import { BLOCK, partWith } from '../support/worked-block';

const PART = partWith([]);
/** µm at the edge of the block, 60 mm away, of a µm on the lever of 74 mm. */
const AT_EDGE = 60 / 74;

/** A traverse of the right side on a placing of its own. */
function onPlacing(placing: string, values: Readonly<Record<number, number>>): readonly Reading[] {
  return traverse('right', values).map((one) => ({ ...one, id: `${placing} ${one.id}`, placing }));
}

/** A side read once for each value, the block lifted between. */
function seated(side: 'right' | 'left', values: readonly number[]): readonly Reading[] {
  return values.map((value, index) => again(nose(side, value), index));
}

function standardOf(readings: readonly Reading[], kit: Kit) {
  const all = [...readings, assumedParallel('right', 0.01)];
  const { kit: used } = inspect(PART, all, kit, 0.95);
  return known(adjust(equationsOf(all, BLOCK, used)).estimate(outOfSquare('right', 'bottom')));
}

describe('what repeats show of the seating', () => {
  // s² = Σ(x - mean)²/ν by hand: right 2 with ν = 4 (1, 1, 0, 0, 0 off), left the same.
  const FIVE = [33, 35, 34, 34, 34];
  const OBSERVED = Math.sqrt((2 + 2) / 8) * AT_EDGE;

  it('replaces what is stated, however large, with eight degrees of freedom', () => {
    const readings = [...seated('right', FIVE), ...seated('left', FIVE)];
    for (const seating of [0.1, OBSERVED, 3, 30]) {
      const kit = { ...DEFAULT_KIT, seating };
      const found = withObservedSeating(kit, readings, BLOCK);
      expectClose(found.seating, OBSERVED);
      expect(found).toEqual({ ...kit, seating: found.seating, seatingDegrees: 8 });
      expect(inspect(PART, readings, kit, 0.95).kit).toEqual(found);
    }
  });

  it('does not with seven, where it is smaller', () => {
    const readings = [...seated('right', FIVE), ...seated('left', FIVE.slice(0, 4))];
    const kit = { ...DEFAULT_KIT, seating: 3 };
    expect(withObservedSeating(kit, readings, BLOCK)).toEqual(kit);
  });

  it('is seen by a column too, in the slope of each traverse', () => {
    // Slopes of 0.1, 0.2 and 0.3 µm/mm: s = 0.1, at the edge 6 µm.
    const readings = [7, 14, 21].flatMap((rise, index) =>
      traverse('right', { 10: 5, 80: 5 + rise }).map((one) => ({
        ...again(one, index),
        placing: `seating ${index}`,
      })),
    );
    const found = withObservedSeating(DEFAULT_KIT, readings, BLOCK);
    expectClose(found.seating, 6);
    expect(found.seatingDegrees).toBe(2);
  });

  it('is nothing where settings, faces or bases differ, or the comparator has no lever', () => {
    const readings = [
      nose('right', 0),
      nose('left', 50),
      nose('right', 100, { setting: 'other' }),
      nose('right', 150, { base: 'top' }),
      ...[0, 90].map((value, index) => again(nose('back', value, { low: 6, high: 6 }), index)),
    ];
    expect(withObservedSeating(DEFAULT_KIT, readings, BLOCK)).toEqual(DEFAULT_KIT);
  });
});

describe('a few repeats', () => {
  const doubt = (values: readonly number[]) =>
    standardOf([...seated('right', values), nose('left', 31)], DEFAULT_KIT).standard;

  it('that are lucky leave the doubt as it is', () => {
    const lucky = [34, 34, 34].map(() => 34);
    const readings = [...seated('right', lucky), nose('left', 31)];
    expect(inspect(PART, readings, DEFAULT_KIT, 0.95).kit).toEqual(DEFAULT_KIT);
    const judged = [33.8, 34, 34.2];
    expectClose(doubt(lucky), doubt(judged));
  });

  it('that are one step of the indicator apart leave it too, and make the result surer', () => {
    const once = [nose('right', 34), nose('left', 31)];
    const stepped = [...seated('right', [34, 35]), ...seated('left', [31, 30])];
    expect(withObservedSeating(DEFAULT_KIT, stepped, BLOCK)).toEqual(DEFAULT_KIT);
    expect(standardOf(stepped, DEFAULT_KIT).standard).toBeLessThan(
      standardOf(once, DEFAULT_KIT).standard,
    );
    // With an indicator of its own that reads finer it is a sign of a bad seating.
    const fine = stepped.map((one) => ({ ...one, instrument: { indicatorResolution: 0.1 } }));
    expect(withObservedSeating(DEFAULT_KIT, fine, BLOCK).seating).toBeGreaterThan(0.5);
  });

  it('that are bad make it larger', () => {
    expect(doubt([29, 34, 39])).toBeGreaterThan(3 * doubt([33.8, 34, 34.2]));
  });

  it('change over where chance no longer explains them: ν·s²/σ² beyond the 95 % point', () => {
    // Chi-square with 2 degrees of freedom: -2·ln(0.05) = 5.991, in every table.
    // Chance is the seating, and a step of 1 µm read on the lever of 74 mm: 1/√12 µm.
    const chance = DEFAULT_KIT.seating ** 2 + AT_EDGE ** 2 / 12;
    const edge = Math.sqrt((5.991464547 * chance) / 2) / AT_EDGE;
    const kitOf = (step: number) =>
      withObservedSeating(DEFAULT_KIT, seated('right', [34 - step, 34, 34 + step]), BLOCK);
    expect(kitOf(edge * 0.999)).toEqual(DEFAULT_KIT);
    expectClose(kitOf(edge * 1.001).seating, edge * 1.001 * AT_EDGE);
  });

  it('check single readings too, once there are enough of them', () => {
    // As above: 2 + 2 in squares, with eight degrees of freedom.
    const five = [33, 35, 34, 34, 34];
    const many = [...seated('right', five), ...seated('left', five)];
    const kit = { ...DEFAULT_KIT, seating: 30 };
    const judged = kitForChecks(kit, many, BLOCK);
    expectClose(judged.seating, Math.sqrt((2 + 2) / 8) * AT_EDGE);
    expect(judged.seatingDegrees).toBe(8);
    // Two degrees of freedom know less than what is stated, however wide it is.
    const few = [...seated('right', [33, 35, 34]), ...seated('left', [31])];
    expect(kitForChecks(kit, few, BLOCK)).toEqual(kit);
    // Two that are surely worse than what is stated widen the results, and still judge no reading.
    const apart = [...seated('right', [14, 54, 34]), ...seated('left', [31])];
    expect(withObservedSeating(DEFAULT_KIT, apart, BLOCK).seating).toBeGreaterThan(10);
    expect(kitForChecks(DEFAULT_KIT, apart, BLOCK)).toEqual(DEFAULT_KIT);
  });

  it('that are bad do not blunt the checks', () => {
    const readings = [...seated('right', [34, 34, 54]), ...seated('left', [31, 31, 31])];
    expect(withObservedSeating(DEFAULT_KIT, readings, BLOCK).seating).toBeGreaterThan(5);
    expect(kitForChecks(DEFAULT_KIT, readings, BLOCK)).toEqual(DEFAULT_KIT);
    const { suspects } = inspect(PART, readings, DEFAULT_KIT, 0.95);
    expect(suspects.map(({ reading }) => reading)).toEqual([readings[2]!.id]);
    // One in three by itself: with the spread that the blunder made, it would look usual.
    const blunted = adjust(
      equationsOf(readings, BLOCK, withObservedSeating(DEFAULT_KIT, readings, BLOCK)),
    );
    const greatest = blunted.checks.map(({ standardised }) => Math.abs(standardised ?? 0));
    expect(Math.max(...greatest)).toBeLessThan(3);
  });
});

describe('degrees of freedom', () => {
  it('of two, with nothing else in doubt, take k to 4.53 (GUM, Table G.2)', () => {
    const kit: Kit = {
      ...DEFAULT_KIT,
      indicatorResolution: 1e-9,
      indicatorError: 0,
      plate: 0,
      heightSetting: 0,
    };
    const readings = [...seated('right', [14, 34, 54]), nose('left', 31)];
    const { degreesOfFreedom } = standardOf(readings, kit);
    expectClose(degreesOfFreedom, 2, { absolute: 1e-5 });
    const printed = known(T_FACTORS.find(([degrees]) => degrees === 2))[4];
    expect(coverageFactor(COVERAGE, degreesOfFreedom).toFixed(2)).toBe(printed);
    expect(printed).toBe('4.53');
  });

  it('are those of Welch and Satterthwaite beside the plate, and more than the two', () => {
    const readings = [...seated('right', [33, 34, 35]), nose('left', 31)];
    const { degreesOfFreedom, contributions, standard } = standardOf(readings, DEFAULT_KIT);
    const seating = known(contributions.find(({ cause }) => cause === 'seating'));
    expect(seating.degreesOfFreedom).toBe(2);
    expectClose(degreesOfFreedom, 2 * (standard / seating.standard) ** 4);
    expect(degreesOfFreedom).toBeGreaterThan(2.5);
  });
});

describe('repeats that are far apart', () => {
  const farIn = (readings: readonly Reading[]) =>
    inspect(PART, readings, DEFAULT_KIT, 0.95).farRepeats;

  it('are named while they are too few to know the seating, with how differently the block sat', () => {
    const right = seated('right', [34, 39]);
    const far = farIn([...right, ...seated('left', [30])]);
    expect(far?.readings).toEqual(right.map(({ id }) => id));
    expectClose(far!.apart, 5 * AT_EDGE);
  });

  it('are the two furthest apart of all, whichever face they are of and in whatever order', () => {
    const [near, far] = [seated('right', [34, 39]), seated('left', [36, 30, 34])];
    for (const readings of [
      [...near, ...far],
      [...far, ...near],
    ]) {
      expect(farIn(readings)?.readings).toEqual([far[0]!.id, far[1]!.id]);
      expectClose(farIn(readings)!.apart, 6 * AT_EDGE);
    }
    // The first with the last, too.
    const ends = seated('right', [30, 33, 36]);
    expect(farIn(ends)?.readings).toEqual([ends[0]!.id, ends[2]!.id]);
  });

  it('are told of traverses by how their placings sat', () => {
    // Slopes of 0.1 and 0.3 µm/mm over the depth of 60 mm, the heights typed from the top down too.
    const readings = [
      ...onPlacing('first', { 10: 5, 80: 12 }),
      ...[...onPlacing('second', { 10: 5, 80: 26 })].reverse(),
    ];
    const far = farIn(readings);
    expect(far?.readings).toEqual([sitReading('first'), sitReading('second')]);
    expectClose(far!.apart, 12);
  });

  it('are none where traverses are of other heights, or of one height alone', () => {
    const other = [
      ...onPlacing('first', { 10: 5, 80: 12 }),
      ...onPlacing('second', { 10: 5, 70: 26 }),
    ];
    expect(farIn(other)).toBeUndefined();
    const single = [...onPlacing('first', { 10: 5 }), ...onPlacing('second', { 10: 50 })];
    expect(farIn(single)).toBeUndefined();
  });

  it('are none where the seating is stated as wide, however vaguely', () => {
    const wide = { ...DEFAULT_KIT, seating: 5 * AT_EDGE };
    const readings = [...seated('right', [34, 39]), ...seated('left', [30])];
    expect(farRepeats(wide, readings, BLOCK)).toBeUndefined();
    expect(farRepeats({ ...wide, seatingDegrees: 3 }, readings, BLOCK)).toBeUndefined();
  });

  it('are explained by the steps of the readings that were repeated, not of the others', () => {
    // On the column, 70 mm apart: s of the slope is step/√12/√(2·35²), on a depth of 60 mm.
    const step = (60 * DEFAULT_KIT.indicatorResolution) / Math.sqrt(12) / Math.hypot(35, 35);
    const chance = DEFAULT_KIT.seating ** 2 + step ** 2;
    // Chi-square with 1 degree of freedom: 3.841 at 95 %, in every table; s² of two is half their distance squared.
    const edge = Math.sqrt(2 * 3.841458821 * chance);
    const coarse = { ...nose('left', 30), instrument: { indicatorResolution: 50 } };
    const at = (apart: number) =>
      farIn([
        ...onPlacing('first', { 10: 0, 80: 0 }),
        ...onPlacing('second', { 10: 0, 80: (apart * 70) / 60 }),
        coarse,
      ]);
    expect(at(edge * 0.999)).toBeUndefined();
    expectClose(at(edge * 1.001)!.apart, edge * 1.001);
  });

  it('are none where a step of the indicator explains them, or nothing was repeated', () => {
    expect(farIn([...seated('right', [34, 34.5]), ...seated('left', [30])])).toBeUndefined();
    expect(farIn([...seated('right', [34]), ...seated('left', [30])])).toBeUndefined();
  });

  it('are none once they are enough to know the seating', () => {
    const five = [33, 38, 34, 39, 35];
    expect(farIn([...seated('right', five), ...seated('left', five)])).toBeUndefined();
  });
});
