import { describe, expect, it } from 'vitest';
import { isLastSeating, passedOverAgain, seatingOf } from '../../src/entry/over-face-seatings';
import { readSetups } from '../../src/entry/read-setups';
import { readingNames } from '../../src/entry/reading-names';
import type { OverFaceSetup } from '../../src/entry/setup-entry';
import { countedIds } from './support/ids';
import { overFaceSetup } from './support/over-face';
import { PART } from './support/part';
import { noseSetup } from './support/setups';
import { micro } from './support/typed';

const map = overFaceSetup(
  [
    ['5', '10', '1'],
    ['35', '50', '2'],
  ],
  'face map',
);
const other = { ...overFaceSetup([['5', '10', '3']], 'face map', ['bottom', 'top']), id: 'other' };

describe('a face that is passed over again after lifting', () => {
  const setups = passedOverAgain([map, other, noseSetup()], map, countedIds());
  const again = setups[1] as OverFaceSetup;

  it('has a setup more after its own, at the same places, with nothing read', () => {
    expect(setups.map(({ id }) => id)).toEqual(['over', again.id, 'other', 'nose']);
    expect(again.places.map(({ up, across }) => [up.text, across.text])).toEqual([
      ['5', '10'],
      ['35', '50'],
    ]);
    expect(again.places.map(({ reading }) => reading)).toEqual([micro(''), micro('')]);
    const ids = [map, again].flatMap(({ places }) => places.map(({ id }) => id));
    expect(new Set(ids).size).toBe(4);
  });

  it('is another placing, with a zero and a tilt of its own', () => {
    const read = {
      ...again,
      places: again.places.map((place) => ({ ...place, reading: micro('7') })),
    };
    const { readings } = readSetups([map, read], PART);
    const placings = readings.map((one) => one.kind === 'face map' && one.placing);
    expect(placings).toEqual(['over', 'over', again.id, again.id]);
  });

  it('is counted by its face and way, and named so', () => {
    expect(setups.slice(0, 3).map((one) => seatingOf(setups, one))).toEqual([1, 2, 1]);
    expect(setups.slice(0, 3).map((one) => isLastSeating(setups, one))).toEqual([
      false,
      true,
      true,
    ]);
    const names = readingNames(setups);
    expect(names.get(map.places[1]!.id)).toBe('Top, place 2');
    expect(names.get(again.places[1]!.id)).toBe('Top, seating 2, place 2');
  });

  it('changes nothing where it has been taken away', () => {
    expect(passedOverAgain([other], map, countedIds())).toEqual([other]);
  });
});
