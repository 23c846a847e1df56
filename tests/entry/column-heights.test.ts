import { expect, it } from 'vitest';
import { addHeight, removeHeight } from '../../src/entry/column-heights';
import { countedIds } from './support/ids';
import { columnSetup } from './support/setups';
import { inch, tenths } from './support/typed';

const COLUMN = columnSetup({}, { size: 'in', reading: 'tenths' });

it('one more height is empty, with an empty reading on each face, in the units of the others', () => {
  const [low, high] = COLUMN.heights;
  const [right, left] = COLUMN.placings;
  expect(addHeight(COLUMN, countedIds())).toEqual({
    ...COLUMN,
    heights: [low, high, { id: 'id 1', height: inch('') }],
    placings: [
      { ...right, readings: { ...right?.readings, 'id 1': tenths('') } },
      { ...left, readings: { ...left?.readings, 'id 1': tenths('') } },
    ],
  });
});

it('taking the last height away takes what was read there, and nothing else', () => {
  const { low } = COLUMN.placings[0]!.readings;
  const shorter = removeHeight(COLUMN);
  expect(shorter.heights).toEqual([COLUMN.heights[0]]);
  expect(shorter.placings[0]?.readings).toEqual({ low });
  expect(Object.keys(shorter.placings[1]?.readings ?? {})).toEqual(['low']);
});

it('a height added and taken away again leaves the column as it was', () => {
  expect(removeHeight(addHeight(COLUMN, countedIds()))).toEqual(COLUMN);
});

it('with no height left there is none to take away, and the next begins in mm', () => {
  const bare = removeHeight(removeHeight(COLUMN));
  expect(bare.heights).toEqual([]);
  expect(removeHeight(bare)).toEqual(bare);
  expect(addHeight(bare, countedIds()).heights).toEqual([
    { id: 'id 1', height: { text: '', unit: 'mm' } },
  ]);
});
