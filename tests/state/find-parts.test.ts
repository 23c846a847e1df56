import { describe, expect, it, vi } from 'vitest';
import { blankPart } from '../../src/entry/part-entry';
import {
  type Asked,
  listed as allParts,
  findParts,
  listParts,
  prepareSearch,
  stateOf,
} from '../../src/state/find-parts';
import { parts } from '../../src/state/shop';
import type { PartRecord, Standing } from '../../src/store/records';
import { part, summary } from '../store/support/samples';

const ALL: Asked = { words: '', state: 'any', shelf: 'bench' };

const made = (
  id: string,
  day: string,
  entry: Partial<PartRecord['entry']>,
  rest = {},
): PartRecord => {
  const record = part(id);
  return { ...record, made: `${day}T12:00:00.000Z`, entry: { ...record.entry, ...entry }, ...rest };
};

const PARTS = [
  made('a', '2024-03-05', { name: 'Angle plate', job: 'J 17', material: 'Cast iron' }),
  made('b', '2024-04-01', { name: 'Block', job: 'J 18', material: 'Aluminium' }),
  made('c', '2024-04-02', { name: 'Old block' }, { archived: { at: '2024-05-01T12:00:00.000Z' } }),
  made('d', '2024-04-03', { name: 'Wrong block' }, { removed: { at: '2024-05-01T12:00:00.000Z' } }),
];

const standing = (probabilities: readonly number[], notFixed = 0, read?: string): Standing => {
  return { probabilities, notFixed, ...(read !== undefined && { read }) };
};

const listed = listParts(
  new Map(PARTS.map((record) => [record.id, record])),
  new Map([
    ['a', { ...summary('a'), standing: standing([0.99, 0.01], 0, '2024-06-09T12:00:00.000Z') }],
    ['b', { ...summary('b'), standing: standing([0.99]) }],
  ]),
);

const found = (asked: Partial<Asked>) =>
  findParts(listed, { ...ALL, ...asked }, 0.95).map((one) => one.part.id);

describe('the list of parts', () => {
  it('begins with the part that was read last', () => {
    expect(listed.map((one) => one.part.id)).toEqual(['a', 'd', 'c', 'b']);
  });

  it.each([
    ['', ['a', 'b']],
    ['  angle  ', ['a']],
    ['CAST iron', ['a']],
    ['j 18', ['b']],
    ['j iron', ['a']],
    ['2024-06', ['a']],
    ['1 apr 2024', ['b']],
    ['mar', []],
    ['block', ['b']],
  ])('is searched for "%s"', (words, ids) => {
    expect(found({ words })).toEqual(ids);
  });

  it('has none that was begun and left with nothing typed, but any that was put away or read', () => {
    const blank = { ...part('blank'), entry: blankPart('mm') };
    const ids = (record: PartRecord, read?: string, shelf: Asked['shelf'] = 'bench') => {
      const known = new Map([['blank', { ...summary('blank'), standing: standing([], 1, read) }]]);
      const all = listParts(new Map([['blank', record]]), known);
      return findParts(all, { ...ALL, shelf }, 0.95).map((one) => one.part.id);
    };
    expect(ids(blank)).toEqual([]);
    expect(ids({ ...blank, entry: { ...blank.entry, job: '7' } })).toEqual(['blank']);
    expect(ids(blank, '2024-06-09T12:00:00.000Z')).toEqual(['blank']);
    const at = '2024-05-01T12:00:00.000Z';
    expect(ids({ ...blank, removed: { at } }, undefined, 'removed')).toEqual(['blank']);
  });

  it('is sieved by where the parts stand, and by where they lie', () => {
    expect(found({ state: 'needs work' })).toEqual(['a']);
    expect(found({ state: 'in' })).toEqual(['b']);
    expect(found({ shelf: 'archive' })).toEqual(['c']);
    expect(found({ shelf: 'removed', words: 'wrong' })).toEqual(['d']);
  });
});

it.each([
  [undefined, undefined],
  [standing([]), 'not read'],
  [standing([], 2), 'not read'],
  [standing([0.99, 0.97]), 'in'],
  [standing([0.99], 1), 'not read'],
  [standing([0.99, 0.5]), 'too close'],
  [standing([0.5, 0.01], 1), 'needs work'],
])('a part with the standing %j is said to be %s', (known, state) => {
  expect(stateOf(known, 0.95)).toBe(state);
});

it('where a part stands follows the level that is asked for', () => {
  expect(stateOf(standing([0.9]), 0.95)).toBe('too close');
  expect(stateOf(standing([0.9]), 0.8)).toBe('in');
});

it('what parts are found by is prepared before the first key', async () => {
  const year = vi.spyOn(Date.prototype, 'getFullYear');
  const own = made('e', '2024-05-07', { name: 'Fifth' });
  parts.value = new Map([['e', own]]);
  await prepareSearch(() => false);
  expect(year).not.toHaveBeenCalled();
  await prepareSearch(() => true);
  expect(year).toHaveBeenCalledTimes(1);
  expect(findParts(allParts.value, { ...ALL, words: 'may' }, 0.95)).toHaveLength(1);
  // The day was written out once, and not again for the key.
  expect(year).toHaveBeenCalledTimes(1);
  vi.restoreAllMocks();
});
