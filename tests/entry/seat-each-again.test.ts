import { describe, expect, it } from 'vitest';
import { onAllFourSides } from '../../src/entry/four-sides';
import { seatEachAgain, sidesToSeat } from '../../src/entry/seat-each-again';
import type { NoseComparatorSetup, OverFaceSetup } from '../../src/entry/setup-entry';
import { countedIds } from './support/ids';
import { overFaceSetup } from './support/over-face';
import { columnSetup, noseSetup } from './support/setups';
import { micro } from './support/typed';

const RIGHT = { face: 'right', datum: 'bottom' } as const;
const FRONT = { face: 'front', datum: 'bottom' } as const;
const TOP = { face: 'top', datum: 'bottom' } as const;

const sides = noseSetup();
const ends: NoseComparatorSetup = {
  ...{ ...sides, id: 'ends', faces: ['front', 'back'] },
  placings: [
    { id: 'on front', face: 'front', reading: micro('12') },
    { id: 'on back', face: 'back', reading: micro('15') },
  ],
};

const facesOf = ({ placings }: NoseComparatorSetup) => placings.map(({ face }) => face);

describe('seating each side again', () => {
  it('adds a reading for both sides of the pair that tells what is asked, and none for the others', () => {
    const [first, second] = seatEachAgain([sides, ends], countedIds(), FRONT);
    expect(first).toBe(sides);
    expect(facesOf(second as NoseComparatorSetup)).toEqual(['front', 'front', 'back', 'back']);
  });

  it('adds one for each side of all, where nothing single is asked', () => {
    const all = [sides, ends, columnSetup()];
    const again = seatEachAgain(all, countedIds());
    expect(again.map(({ id }) => id)).toEqual(all.map(({ id }) => id));
    expect(again.map((setup) => 'placings' in setup && setup.placings.length)).toEqual([4, 4, 4]);
  });

  it('adds none while the last seating of a side is still to be read', () => {
    const again = seatEachAgain([sides], countedIds(), RIGHT);
    expect(seatEachAgain(again, countedIds(), RIGHT)).toBe(again);
    const column = seatEachAgain([columnSetup()], countedIds());
    expect(seatEachAgain(column, countedIds())).toBe(column);
  });

  it('adds one for each side that a block was turned on', () => {
    const ids = countedIds();
    const four = onAllFourSides(sides, ids);
    const read = {
      ...four,
      placings: four.placings.map((one) => ({ ...one, reading: micro('1') })),
    };
    const [again] = seatEachAgain([read], ids, RIGHT);
    expect((again as NoseComparatorSetup).placings).toHaveLength(8);
  });

  it('passes over the top once more for what is parallel', () => {
    const over: OverFaceSetup = overFaceSetup([['5', '10', '1']], 'over the top', [
      'top',
      'bottom',
    ]);
    const again = seatEachAgain([sides, over], countedIds(), TOP);
    expect(again.map(({ kind }) => kind)).toEqual([
      'nose comparator',
      'over the top',
      'over the top',
    ]);
    expect(seatEachAgain(again, countedIds(), TOP)).toBe(again);
    expect(seatEachAgain([sides, over], countedIds(), RIGHT)).toHaveLength(2);
  });
});

describe('the sides that are meant', () => {
  it('are the pair that tells it, though others are read too', () => {
    expect(sidesToSeat([sides, ends], RIGHT)).toEqual(['right', 'left']);
    expect(sidesToSeat([sides, ends], FRONT)).toEqual(['front', 'back']);
  });

  it('are all four where the block is turned on them', () => {
    expect(sidesToSeat([onAllFourSides(sides, countedIds())], RIGHT)).toBe('all four');
  });

  it('are no single pair where two setups tell it, or none', () => {
    expect(sidesToSeat([sides, columnSetup()], RIGHT)).toBeUndefined();
    expect(sidesToSeat([], RIGHT)).toBeUndefined();
  });
});
