import { expect, it } from 'vitest';
import { addHeight, withHeight } from '../../src/entry/column-heights';
import { heightsToTakeOver, withHeightsOf } from '../../src/entry/heights-of-another';
import { newSetup } from '../../src/entry/new-setup';
import { withTraverseReading } from '../../src/entry/placings';
import type { ColumnSetup, NoseComparatorSetup } from '../../src/entry/setup-entry';
import { countedIds } from './support/ids';
import { inch } from './support/typed';

const newId = countedIds();
const UNITS = { size: 'in', reading: 'tenths' } as const;
const PAIRS = {
  sides: ['right', 'left'],
  others: ['back', 'front'],
} as const;

const column = (pair: keyof typeof PAIRS) =>
  newSetup('column', PAIRS[pair], 'bottom', UNITS, newId) as ColumnSetup;
const comparator = (pair: keyof typeof PAIRS) =>
  newSetup('nose comparator', PAIRS[pair], 'bottom', UNITS, newId) as NoseComparatorSetup;

const at = (setup: ColumnSetup, ...heights: readonly string[]) =>
  heights.reduce(
    (one, text, row) => withHeight(one, one.heights[row]?.id ?? '', inch(text)),
    setup,
  );

it('are those of the first setup of the same kind that has all of them', () => {
  const [set, half] = [at(column('sides'), '0.25', '2.25'), at(column('sides'), '1')];
  const [empty, other] = [column('others'), comparator('others')];
  expect(heightsToTakeOver(empty, [half, empty, set, other])).toBe(set);
  expect(heightsToTakeOver(empty, [half, empty])).toBeUndefined();
  expect(heightsToTakeOver(other, [set, other])).toBeUndefined();
});

it('are not offered where a height is typed, or a reading', () => {
  const set = at(column('sides'), '0.25', '2.25');
  expect(heightsToTakeOver(at(column('others'), '1'), [set])).toBeUndefined();
  const empty = column('others');
  const where = { placing: empty.placings[0]?.id ?? '', height: empty.heights[0]?.id ?? '' };
  expect(heightsToTakeOver(withTraverseReading(empty, where, '2'), [set])).toBeUndefined();
});

it('are as many as the other has, each with a field to read on every side', () => {
  const three = at(addHeight(column('sides'), newId), '0.25', '1 1/4', '2.25');
  for (const empty of [column('others'), addHeight(addHeight(column('others'), newId), newId)]) {
    const same = withHeightsOf(empty, three, newId) as ColumnSetup;
    expect(same.heights.map(({ height }) => height)).toEqual(
      three.heights.map(({ height }) => height),
    );
    for (const { readings } of same.placings) {
      expect(Object.keys(readings)).toEqual(same.heights.map(({ id }) => id));
    }
    expect(same.faces).toEqual(['back', 'front']);
  }
});

it('are both of a comparator', () => {
  const set = { ...comparator('sides'), noseHeight: inch('0.25'), indicatorHeight: inch('2.25') };
  const empty = comparator('others');
  expect(heightsToTakeOver(empty, [set, empty])).toBe(set);
  expect(withHeightsOf(empty, set, newId)).toEqual({
    ...empty,
    ...{ noseHeight: set.noseHeight, indicatorHeight: set.indicatorHeight },
  });
});
