import { describe, expect, it } from 'vitest';
import { onAllFourSides } from '../../src/entry/four-sides';
import { isRepeat, seatAgain, traverseAgain, withoutPlacing } from '../../src/entry/placings';
import { countedIds } from './support/ids';
import { columnSetup, noseSetup } from './support/setups';
import { micro, tenths } from './support/typed';

describe('seating the block again', () => {
  it('adds one placing after its own, the reading empty in its unit', () => {
    const setup = noseSetup({}, { size: 'mm', reading: 'tenths' });
    expect(seatAgain(setup, 'on right', countedIds())).toEqual({
      ...setup,
      placings: [
        setup.placings[0],
        { id: 'id 1', face: 'right', reading: tenths('') },
        setup.placings[1],
      ],
    });
  });

  it('stands on what it stood on, and is a repeat', () => {
    const four = onAllFourSides(noseSetup(), countedIds());
    const [, , turned] = four.placings;
    const again = seatAgain(four, turned!.id, () => 'again');
    expect(again.placings[3]).toEqual({ ...turned, id: 'again', reading: micro('') });
    expect(isRepeat(again.placings, 'again')).toBe(true);
    expect(isRepeat(again.placings, turned!.id)).toBe(false);
  });

  it('of a placing that is not there changes nothing', () => {
    expect(seatAgain(noseSetup(), 'gone', countedIds())).toEqual(noseSetup());
  });
});

describe('running a column up again', () => {
  it('adds one traverse after its own, every height empty in its unit', () => {
    const setup = columnSetup();
    expect(traverseAgain(setup, 'on left', countedIds()).placings).toEqual([
      ...setup.placings,
      { id: 'id 1', face: 'left', readings: { low: micro(''), high: micro('') } },
    ]);
    expect(traverseAgain(setup, 'on right', countedIds()).placings[1]).toMatchObject({
      id: 'id 1',
      face: 'right',
    });
  });
});

describe('taking a placing off', () => {
  it('leaves the others as they are', () => {
    const nose = noseSetup();
    expect(withoutPlacing(nose, 'on right')).toEqual({ ...nose, placings: [nose.placings[1]] });
    const column = columnSetup();
    expect(withoutPlacing(column, 'on left')).toEqual({
      ...column,
      placings: [column.placings[0]],
    });
    expect(withoutPlacing(nose, 'gone')).toEqual(nose);
  });
});

describe('a repeat', () => {
  it('has the same face and base before it', () => {
    const placings = [
      { id: 'a', face: 'right' },
      { id: 'b', face: 'right', base: 'top' },
      { id: 'c', face: 'left' },
      { id: 'd', face: 'right', base: 'top' },
      { id: 'e', face: 'right' },
    ] as const;
    expect(placings.map(({ id }) => isRepeat(placings, id))).toEqual([
      ...[false, false, false],
      ...[true, true],
    ]);
  });
});
