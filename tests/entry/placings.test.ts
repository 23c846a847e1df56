import { describe, expect, it } from 'vitest';
import {
  baseOf,
  isFourSided,
  isRepeat,
  onAllFourSides,
  seatAgain,
  traverseAgain,
  withoutPlacing,
} from '../../src/entry/placings';
import { readSetups } from '../../src/entry/read-setups';
import type { NoseComparatorSetup } from '../../src/entry/setup-entry';
import { countedIds } from './support/ids';
import { PART } from './support/part';
import { columnSetup, noseSetup } from './support/setups';
import { micro, tenths } from './support/typed';

/** Each placing as face and what the block stands on. */
const corners = (setup: NoseComparatorSetup) =>
  setup.placings.map((placing) => [placing.face, baseOf(setup, placing)]);

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

describe('turning it on all four sides', () => {
  it('adds just the two corners that a swung setting lacks', () => {
    const four = onAllFourSides(noseSetup(), countedIds());
    expect(four.placings.slice(0, 2)).toEqual(noseSetup().placings);
    expect(corners(four)).toEqual([
      ['right', 'bottom'],
      ['left', 'bottom'],
      ['top', 'right'],
      ['left', 'top'],
    ]);
    expect(isFourSided(noseSetup())).toBe(false);
    expect(isFourSided(four)).toBe(true);
  });

  it('adds nothing once all four are there, and then one for each that is taken off', () => {
    const four = onAllFourSides(noseSetup(), countedIds());
    expect(onAllFourSides(four, countedIds())).toEqual(four);
    for (const { id } of four.placings) {
      const mended = onAllFourSides(withoutPlacing(four, id), () => 'new');
      expect(mended.placings).toHaveLength(4);
      // Each angle of the section once, from whichever of its faces.
      const angles = corners(mended).map((corner) => corner.sort().join());
      expect(new Set(angles)).toEqual(
        new Set(['bottom,right', 'right,top', 'left,top', 'bottom,left']),
      );
    }
  });

  it('fixes the angles without any word of the taper', () => {
    const four = onAllFourSides(noseSetup({ indicator: '50' }), countedIds());
    const values = ['6', '-4', '-1', '7'];
    const placings = four.placings.map((one, at) => ({ ...one, reading: micro(values[at]!) }));
    const { readings, problems } = readSetups([{ ...four, placings }], PART);
    expect([...problems.keys()]).toEqual([]);
    expect(readings).toMatchObject([
      { face: 'right', base: 'bottom', value: 6 },
      { face: 'left', base: 'bottom', value: -4 },
      { face: 'top', base: 'right', value: -1 },
      { face: 'left', base: 'top', value: 7 },
    ]);
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
