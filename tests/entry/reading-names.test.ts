import { describe, expect, it } from 'vitest';
import { equationsOf } from '../../src/core/readings/equations-of';
import { DEFAULT_KIT } from '../../src/core/readings/kit';
import { onAllFourSides } from '../../src/entry/four-sides';
import { seatAgain, traverseAgain } from '../../src/entry/placings';
import { readSetups } from '../../src/entry/read-setups';
import { readingNames, traverseNames } from '../../src/entry/reading-names';
import type { ColumnSetup, NoseComparatorSetup, SetupEntry } from '../../src/entry/setup-entry';
import { countedIds } from './support/ids';
import { overFaceSetup } from './support/over-face';
import { PART } from './support/part';
import { assumption, columnSetup, micrometerSetup, noseSetup } from './support/setups';
import { micro } from './support/typed';

/** Everything read, so that every id there can be is made. */
function filledNose(setup: NoseComparatorSetup): NoseComparatorSetup {
  return { ...setup, placings: setup.placings.map((one) => ({ ...one, reading: micro('1') })) };
}

function filledColumn(setup: ColumnSetup): ColumnSetup {
  const readings = { low: micro('1'), high: micro('2') };
  return { ...setup, placings: setup.placings.map((one) => ({ ...one, readings })) };
}

const swung = noseSetup({ indicator: '35' });
const reseated = filledNose(seatAgain(swung, 'on right', () => 'again'));
const fourSided = filledNose(onAllFourSides(reseated, countedIds()));
// The column's placings are called as the comparator's are: its readings are not.
const run = filledColumn(traverseAgain(columnSetup(), 'on left', () => 'third'));
const thick = micrometerSetup([
  ['10', '', '60'],
  ['80', '', '60.001'],
]);
const over = overFaceSetup([
  ['5', '10', '1'],
  ['35', '50', '2'],
]);
const map = { ...overFaceSetup([['5', '10', '1']], 'face map'), id: 'map' };
const ALL: readonly SetupEntry[] = [
  fourSided,
  run,
  thick,
  over,
  { ...map, places: map.places.map((place) => ({ ...place, id: 'jacks' })) },
  assumption(micro('1')),
];

const nameOf = (setup: SetupEntry) => Object.fromEntries(readingNames([setup]));

describe('the name of a reading', () => {
  it('of a comparator tells the side, and the seating from the second on', () => {
    expect(nameOf(reseated)).toEqual({
      'on right': 'Right side',
      again: 'Right side, seating 2',
      'on left': 'Left side',
    });
  });

  it('tells what it stands on as soon as it is turned on all four sides', () => {
    expect(nameOf(fourSided)).toEqual({
      'on right': 'Right side on bottom',
      again: 'Right side on bottom, seating 2',
      'on left': 'Left side on bottom',
      'id 1': 'Top side on right',
      'id 2': 'Left side on top',
    });
  });

  it('tells what it stands on where another setting reads the same side from another base', () => {
    const onFront = noseSetup({}, undefined, 'front');
    const placings = onFront.placings.map((one) => ({ ...one, id: `${one.id}, front` }));
    expect(Object.fromEntries(readingNames([swung, { ...onFront, placings }]))).toEqual({
      'on right': 'Right side on bottom',
      'on left': 'Left side on bottom',
      'on right, front': 'Right side on front',
      'on left, front': 'Left side on front',
    });
  });

  it('of a traverse is the same without the height', () => {
    expect(Object.fromEntries(traverseNames([fourSided, run]))).toEqual({
      'on right': 'Right',
      'on left': 'Left',
      third: 'Left, seating 2',
    });
  });

  it('of a column tells which height it is while none is typed', () => {
    const names = Object.values(nameOf(columnSetup({ heights: ['', '80'] })));
    expect(names).toContain('Right at height 1');
    expect(names).toContain('Left at 80');
  });

  it('of a column tells the height as typed, and how the block sat', () => {
    expect(nameOf(run)).toEqual({
      'on right low': 'Right at 10',
      'on right high': 'Right at 80',
      'sit of on right': 'Right: how the block sat',
      'on left low': 'Left at 10',
      'on left high': 'Left at 80',
      'sit of on left': 'Left: how the block sat',
      'third low': 'Left, seating 2 at 10',
      'third high': 'Left, seating 2 at 80',
      'sit of third': 'Left, seating 2: how the block sat',
    });
  });

  it('of places tells which in the list', () => {
    expect(nameOf(thick)).toEqual({
      'place 1': 'Micrometer right to left, place 1',
      'place 2': 'Micrometer right to left, place 2',
    });
    expect(nameOf(over)).toEqual({
      'spot 1': 'Over the top, place 1',
      'spot 2': 'Over the top, place 2',
      'sit of over': 'Over the top: how the block sat',
    });
    expect(nameOf(map)).toMatchObject({ 'spot 1': 'Top, place 1' });
    expect(nameOf(assumption(micro('1')))).toEqual({ word: 'right and left taken as parallel' });
  });
});

describe('the names of a whole inspection', () => {
  const names = readingNames(ALL);
  const { readings, problems } = readSetups(ALL, PART);

  it('name each id once', () => {
    const each = ALL.flatMap((setup) => [...readingNames([setup]).keys()]);
    expect(new Set(each).size).toBe(each.length);
    expect([...names.keys()]).toEqual(each);
  });

  it('name every reading by the id that its reader makes, and all that is checked', () => {
    expect([...problems]).toEqual([]);
    const checked = equationsOf(readings, PART.block, DEFAULT_KIT).map(({ reading }) => reading);
    const made = new Set([...readings.map(({ id }) => id), ...checked]);
    expect(readings).toHaveLength(5 + 6 + 2 + 2 + 1 + 1);
    // A map on jacks has no sit to judge.
    expect([...names.keys()].filter((id) => !made.has(id))).toEqual(['sit of map']);
    expect([...made].filter((id) => !names.has(id))).toEqual([]);
  });
});
