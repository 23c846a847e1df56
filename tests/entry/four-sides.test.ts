import { describe, expect, it } from 'vitest';
import { addHeight, removeHeight } from '../../src/entry/column-heights';
import { fieldKey } from '../../src/entry/field-keys';
import {
  baseOf,
  extraSidesAreEmpty,
  fitsLyingDown,
  isFourSided,
  onAllFourSides,
  onTwoSides,
  type StandingSetup,
} from '../../src/entry/four-sides';
import { newSetup, readAgain } from '../../src/entry/new-setup';
import { withoutPlacing, withTraverseReading } from '../../src/entry/placings';
import { readSetups } from '../../src/entry/read-setups';
import { readingNames } from '../../src/entry/reading-names';
import { readingRows } from '../../src/entry/reading-rows';
import { blank } from '../../src/entry/typed-length';
import { countedIds } from './support/ids';
import { PART } from './support/part';
import { columnSetup, noseSetup } from './support/setups';
import { told } from './support/told';
import { micro } from './support/typed';

/** Each placing as face and what the block stands on. */
const corners = (setup: StandingSetup) =>
  setup.placings.map((placing) => [placing.face, baseOf(setup, placing)]);

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

describe('a column that the block is turned under on all four sides', () => {
  const LOW = { heights: ['10', '50'] } as const;
  const turned = () => onAllFourSides(columnSetup(LOW), countedIds());

  it('runs up the two corners more, at the same heights and in the same unit', () => {
    const four = onAllFourSides(columnSetup(LOW, { size: 'mm', reading: 'tenths' }), countedIds());
    expect(corners(four)).toEqual([
      ['right', 'bottom'],
      ['left', 'bottom'],
      ['top', 'right'],
      ['left', 'top'],
    ]);
    const empty = { low: blank('tenths'), high: blank('tenths') };
    expect(four.placings.slice(2).map(({ readings }) => readings)).toEqual([empty, empty]);
    expect(onAllFourSides(four, countedIds())).toEqual(four);
  });

  it('is read on what it stands on each time, and says so', () => {
    const read = turned().placings.reduce(
      (setup, { id }, at) =>
        ['low', 'high'].reduce(
          (one, height, row) =>
            withTraverseReading(one, { placing: id, height }, String(at + 2 * row)),
          setup,
        ),
      turned(),
    );
    const { readings, problems } = readSetups([read], PART);
    expect(told(problems)).toEqual({});
    const onEach = ['bottom', 'bottom', 'bottom', 'bottom', 'right', 'right', 'top', 'top'];
    expect(readings.map((reading) => 'base' in reading && reading.base)).toEqual(onEach);
    expect(readingRows([read]).map(({ base }) => base)).toEqual(onEach);
    expect([...readingNames([read]).values()]).toContain('Top on right at 50');
  });

  it('asks for what is missing where it lies, and stands so again next time', () => {
    const { problems } = readSetups([turned()], PART);
    const key = fieldKey.traverse(turned().placings[2]!.id, 'low');
    expect(problems.get(key)?.message).toBe('Stand it on its right and read the top side here');
    const again = readAgain(turned(), countedIds()) as ReturnType<typeof turned>;
    expect(corners(again)).toEqual(corners(turned()));
  });

  it('reaches no higher than the block does on any side', () => {
    expect(fitsLyingDown(columnSetup(LOW), PART.block)).toBe(true);
    expect(fitsLyingDown(columnSetup(), PART.block)).toBe(false);
    const { problems } = readSetups([onAllFourSides(columnSetup(), countedIds())], PART);
    expect(problems.has(fieldKey.height('high'))).toBe(true);
  });

  it('keeps its heights on all sides, and goes back to two while nothing was read on the others', () => {
    const higher = addHeight(turned(), () => 'third');
    expect(higher.placings.map(({ readings }) => Object.keys(readings).length)).toEqual([
      3, 3, 3, 3,
    ]);
    expect(removeHeight(higher)).toEqual(turned());
    expect(extraSidesAreEmpty(turned())).toBe(true);
    expect(onTwoSides(turned())).toEqual(columnSetup(LOW));
    const { id } = turned().placings[3]!;
    const read = withTraverseReading(turned(), { placing: id, height: 'low' }, '3');
    expect(extraSidesAreEmpty(read)).toBe(false);
  });

  it('can be so from the start', () => {
    const units = { size: 'in', reading: 'thou' } as const;
    const fresh = newSetup('column', ['right', 'left'], 'bottom', units, countedIds());
    const four = onAllFourSides(fresh as ReturnType<typeof turned>, countedIds());
    expect(isFourSided(four)).toBe(true);
    expect(Object.values(four.placings[3]!.readings)).toEqual([blank('thou'), blank('thou')]);
  });
});
