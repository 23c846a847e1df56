import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { addKit, kit, kitName, setKit, setKitName, takeKit } from '../../src/state/kits';
import { openShop } from '../../src/state/open-shop';
import { loading, parts, putPart, shop, unread } from '../../src/state/shop';
import { entryUnits, readLevel, setLevel } from '../../src/state/shop-settings';
import { loadParts, save } from '../../src/store/shop-store';
import { micro } from '../entry/support/typed';
import { putAnything, storedAt } from '../store/support/database';
import { part, shop as shopRecord } from '../store/support/samples';
import { saving, startAfresh } from './support/fresh';

beforeEach(startAfresh);
afterEach(() => {
  vi.restoreAllMocks();
});

describe('opening the shop', () => {
  it('reads what is stored, the parts by age', async () => {
    const units = { size: 'in', deviation: 'thou' } as const;
    const made = '2024-03-01T08:00:00.000Z';
    await save([{ ...shopRecord('90'), units }, part('a'), { ...part('z'), made }]);
    await openShop();
    expect(loading.value).toBe('ready');
    expect(shop.value).toEqual({ ...shopRecord('90'), units });
    expect(entryUnits.value).toEqual({ size: 'in', reading: 'thou' });
    expect([...parts.value.keys()]).toEqual(['z', 'a']);
    expect(unread.value).toEqual([]);
  });

  it('has a shop to begin with where none is stored', async () => {
    await openShop();
    expect(loading.value).toBe('ready');
    expect(shop.value).toMatchObject({ level: '95', units: { size: 'mm', deviation: 'µm' } });
    expect(kit.value).toBeDefined();
  });

  it('does not lose a part that was begun before the database answered', async () => {
    await save([part('old')]);
    const opening = openShop();
    putPart(part('new'));
    await opening;
    expect([...parts.value.keys()].sort()).toEqual(['new', 'old']);
    await saving('saved');
  });

  it('tells how many records could not be read, and opens the rest', async () => {
    await putAnything('part/bad', 'nonsense');
    await putAnything('part/later', { ...part('later'), format: 99 });
    await save([part('good')]);
    await openShop();
    expect(unread.value).toMatchObject([{ reason: 'damaged' }, { reason: 'newer' }]);
    expect([...parts.value.keys()]).toEqual(['good']);
  });

  it('tells of a shop that could not be read, too', async () => {
    await putAnything('shop', { ...shopRecord(), format: 99 });
    await openShop();
    expect(loading.value).toBe('ready');
    expect(unread.value).toEqual([{ key: 'shop', reason: 'newer' }]);
  });

  it('that fails is told', async () => {
    const told = vi.spyOn(console, 'error').mockImplementation(() => undefined);
    vi.spyOn(IDBObjectStore.prototype, 'getAll').mockImplementation(() => {
      throw new DOMException('Storage is forbidden here', 'SecurityError');
    });
    await openShop();
    expect(loading.value).toBe('failed');
    expect(told).toHaveBeenCalledOnce();
  });
});

describe('a change of the shop', () => {
  it('is not written over a record that could not be read', async () => {
    const later = { ...shopRecord(), format: 99 };
    await putAnything('shop', later);
    await openShop();
    setLevel('90');
    await saving('saved');
    expect(shop.value.level).toBe('90');
    expect(await storedAt('shop')).toEqual(later);
  });

  it('is stored with all the rest of it', async () => {
    await openShop();
    const { kit: typed } = shop.value;
    setLevel('9');
    setLevel('90');
    setKit({ ...typed, plate: micro('1.5') });
    expect(shop.value).toMatchObject({ level: '90', kit: { plate: micro('1.5') } });
    expect(kit.value?.plate).toBe(1.5);
    await saving('saved');
    expect(await storedAt('shop')).toEqual(shop.value);
  });

  it('of a part is stored and shown', async () => {
    putPart(part('p', 'Before'));
    putPart(part('p', 'After'));
    expect([...parts.value.values()]).toEqual([part('p', 'After')]);
    await saving('saved');
    expect((await loadParts()).records).toEqual([part('p', 'After')]);
  });
});

describe('the level for a verdict', () => {
  it.each([
    ['95', 0.95],
    ['60', 0.6],
    ['99,9', 0.999],
  ])('of %s per cent is %d', (text, level) => {
    expect(readLevel(text)).toBeCloseTo(level, 12);
  });

  it.each(['', '59.9', '99.91', '100', '-95', '95 %', '9,5.0'])('cannot be %j', (text) => {
    expect(readLevel(text)).toBeUndefined();
  });
});

describe('the kits of the shop', () => {
  it('are entered once and taken out of the drawer again', async () => {
    await openShop();
    setKit({ ...shop.value.kit, plate: micro('2') });
    addKit();
    setKitName('Lever');
    setKit({ ...shop.value.kit, plate: micro('4') });
    expect(kitName.value).toBe('Lever');
    expect(kit.value?.plate).toBe(4);
    takeKit(0);
    expect(kitName.value).toBe('Kit 1');
    expect(kit.value?.plate).toBe(2);
    expect(shop.value.otherKits?.map(({ name }) => name)).toEqual(['Lever']);
    expect(() => takeKit(1)).toThrow(RangeError);
    await saving('saved');
    expect(await storedAt('shop')).toEqual(shop.value);
  });
});
