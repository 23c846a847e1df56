import { beforeEach, describe, expect, it } from 'vitest';
import { FORMAT } from '../../src/store/records';
import { loadChain, loadParts, loadShop, save } from '../../src/store/shop-store';
import { emptyDatabase, putAnything, storedAt } from './support/database';
import { inspection, part, shop, work } from './support/samples';

beforeEach(emptyDatabase);

const NONE = { records: [], unread: [] };

describe('what is saved', () => {
  it('is nothing at first', async () => {
    expect(await loadShop()).toEqual({ records: [], unread: [] });
    expect(await loadParts()).toEqual(NONE);
    expect(await loadChain('p')).toEqual(NONE);
  });

  it('comes back as it was, each kind from its own place', async () => {
    await save([shop('90'), part('p'), inspection('i', 'p'), work('w', 'p'), part('q')]);
    expect(await loadShop()).toEqual({ ...NONE, records: [shop('90')] });
    expect(await loadParts()).toEqual({ ...NONE, records: [part('p'), part('q')] });
    expect(await loadChain('p')).toEqual({
      ...NONE,
      records: [inspection('i', 'p'), work('w', 'p')],
    });
  });

  it('takes the place of what it was before', async () => {
    await save([part('p', 'Before'), part('q')]);
    await save([part('p', 'After')]);
    const { records } = await loadParts();
    expect(records.map(({ entry }) => entry.name)).toEqual(['After', 'Try square block']);
  });

  it('ends with the last of several that were saved without waiting', async () => {
    const names = ['One', 'Two', 'Three', 'Four'];
    await Promise.all(names.map((name) => save([part('p', name)])));
    const { records } = await loadParts();
    expect(records).toEqual([part('p', 'Four')]);
  });

  it('may be nothing', async () => {
    await save([]);
    expect(await loadParts()).toEqual(NONE);
  });
});

describe('the chain of a part', () => {
  it('holds no record of another part, not even where one id begins with the other', async () => {
    const ids = ['p', 'p1', 'p10', 'P', 'p-1'];
    await save(
      ids.flatMap((id) => [part(id), inspection(`i of ${id}`, id), work(`w of ${id}`, id)]),
    );
    for (const id of ids) {
      const { records } = await loadChain(id);
      expect(records.map((record) => record.id)).toEqual([`i of ${id}`, `w of ${id}`]);
    }
    expect((await loadParts()).records).toHaveLength(ids.length);
  });
});

describe('records that cannot be read', () => {
  const damaged = [
    undefined,
    null,
    'part',
    42,
    [],
    {},
    { ...part('p'), kind: 'recipe' },
    { ...part('p'), format: 0 },
    { ...part('p'), format: 1.5 },
    { ...part('p'), format: '1' },
  ];
  const newer = [
    { ...part('p'), format: FORMAT + 1 },
    { kind: 'part', format: 99 },
  ];

  it('are named and left as they are, and the rest opens', async () => {
    const values = [...damaged, ...newer];
    await Promise.all(values.map((value, index) => putAnything(`part/bad ${index}`, value)));
    await save([part('good')]);
    const { records, unread } = await loadParts();
    expect(records).toEqual([part('good')]);
    const reasons = new Map(unread.map(({ key, reason }) => [key, reason]));
    for (const [index, value] of values.entries()) {
      expect(reasons.get(`part/bad ${index}`)).toBe(index < damaged.length ? 'damaged' : 'newer');
      expect(await storedAt(`part/bad ${index}`)).toEqual(value);
    }
  });

  it('are told by the name that was typed, where it can be made out', async () => {
    await putAnything('part/p', { ...part('p', 'Sine bar'), format: FORMAT + 1 });
    await putAnything('part/q', { entry: { name: 7 } });
    expect((await loadParts()).unread).toEqual([
      { key: 'part/p', reason: 'newer', name: 'Sine bar' },
      { key: 'part/q', reason: 'damaged' },
    ]);
  });

  it('are named in a chain too', async () => {
    await save([inspection('good', 'p')]);
    await putAnything('chain/p/inspection/bad', { kind: 'inspection' });
    await putAnything('chain/p/work/later', { ...work('later', 'p'), format: FORMAT + 1 });
    expect(await loadChain('p')).toEqual({
      records: [inspection('good', 'p')],
      unread: [
        { key: 'chain/p/inspection/bad', reason: 'damaged' },
        { key: 'chain/p/work/later', reason: 'newer' },
      ],
    });
  });

  it('are damaged where what belongs to every record of their kind is not there', async () => {
    await putAnything('part/bare', { kind: 'part', format: FORMAT });
    await save([part('good')]);
    expect(await loadParts()).toEqual({
      records: [part('good')],
      unread: [{ key: 'part/bare', reason: 'damaged' }],
    });
  });

  it('leave the shop as it comes, and stay', async () => {
    const later = { ...shop(), format: FORMAT + 1 };
    await putAnything('shop', later);
    expect(await loadShop()).toEqual({
      records: [],
      unread: [{ key: 'shop', reason: 'newer' }],
    });
    expect(await storedAt('shop')).toEqual(later);
  });
});

it('more parts than are read at a time come all, each once and in the order of their keys', async () => {
  const names = Array.from({ length: 700 }, (_, index) => `p${String(index).padStart(4, '0')}`);
  await save(names.map((name) => part(name)));
  await putAnything('part/p0299', { format: 99, kind: 'part' });
  const { records, unread } = await loadParts();
  expect(records.map(({ id }) => id)).toEqual(names.filter((name) => name !== 'p0299'));
  expect(unread).toEqual([{ key: 'part/p0299', reason: 'newer' }]);
});
