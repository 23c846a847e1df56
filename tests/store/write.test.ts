import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { FORMAT, type InspectionRecord } from '../../src/store/records';
import { loadChain, loadParts, loadVersions, save } from '../../src/store/shop-store';
import { StorageError } from '../../src/store/storage-error';
import { write } from '../../src/store/write';
import { emptyDatabase, putAnything, storedAt, storedKeys } from './support/database';
import { inspection, part, shop, uncloneable, version } from './support/samples';

beforeEach(emptyDatabase);
afterEach(() => {
  vi.restoreAllMocks();
});

const nothing = () => undefined;
const LATER = '2024-03-05T15:00:00.000Z';

describe('writing', () => {
  it('puts what is new, and what is made from what lies there', async () => {
    await save([part('p', 'Before')]);
    const agreed = part('p', 'Before');
    const { records, overruled } = await write([part('p', 'After'), part('q')], (key) =>
      key === 'part/p' ? agreed : undefined,
    );
    expect(records).toEqual([part('p', 'After'), part('q')]);
    expect(overruled).toEqual([]);
    expect((await loadParts()).records).toEqual(records);
    expect(await storedKeys()).toEqual(['part/p', 'part/q']);
  });

  it('joins what another window has put there, and keeps what gives way in the same transaction', async () => {
    const theirs = { ...part('p', 'Theirs'), changed: LATER };
    await save([theirs]);
    const from = part('p', 'Before');
    const mine = { ...part('p', 'Mine'), example: true };
    const { records, overruled } = await write([mine], () => from);
    expect(records).toMatchObject([{ entry: { name: 'Theirs' }, example: true }]);
    expect(overruled).toMatchObject([{ kind: 'version', of: 'part/p', record: mine }]);
    expect((await loadParts()).records).toEqual(records);
    expect(await storedKeys()).toEqual(['part/p', `version/part/p/${mine.changed}`]);
  });

  it('never puts one version in the place of another', async () => {
    const from: InspectionRecord = { ...inspection('i', 'p'), part: 'p' };
    const state = (right: string): InspectionRecord => ({
      ...from,
      leftOut: { right: { at: LATER, why: right } },
    });
    for (const right of ['one', 'two', 'three']) {
      await write([state(right)], () => from);
    }
    const { records } = await loadVersions('p');
    const kept = [...records.map(({ record }) => record), ...(await loadChain('p')).records];
    const whys = kept.map((record) => (record as InspectionRecord).leftOut?.right?.why);
    expect(whys.toSorted()).toEqual(['one', 'three', 'two']);
  });

  it('puts versions as they are', async () => {
    const one = version(inspection('i', 'p'));
    await write([one], nothing);
    expect((await loadVersions('p')).records).toEqual([one]);
  });

  it.each([
    ['first', [uncloneable('bad'), part('p')]],
    ['last', [part('p'), uncloneable('bad')]],
  ])('keeps none where one cannot be stored: %s', async (_, changed) => {
    await expect(write(changed, nothing)).rejects.toThrow(/clone/i);
    expect(await storedKeys()).toEqual([]);
  });

  it('tells why the browser gave the transaction up', async () => {
    const full = new DOMException('No room', 'QuotaExceededError');
    const put = IDBObjectStore.prototype.put;
    vi.spyOn(IDBObjectStore.prototype, 'put').mockImplementation(function (
      this: IDBObjectStore,
      ...values
    ) {
      const request = put.apply(this, values);
      Object.assign(this.transaction, { error: full });
      this.transaction.abort();
      return request;
    });
    await expect(write([part('p')], nothing)).rejects.toBe(full);
  });
});

describe('what lies in the place of a record and cannot be read', () => {
  it('is left untouched where it is of a newer version, and nothing of the group is written', async () => {
    const newer = { ...shop(), format: FORMAT + 1, something: 'new' };
    await putAnything('shop', newer);
    const refused = write([part('p'), shop('90')], nothing);
    await expect(refused).rejects.toThrow(StorageError);
    await expect(refused).rejects.toMatchObject({ refusal: 'newer record' });
    expect(await storedAt('shop')).toEqual(newer);
    expect(await storedKeys()).toEqual(['shop']);
  });

  it('is set aside in full where it is damaged', async () => {
    await putAnything('shop', { kind: 'shop', format: FORMAT, kit: null });
    await write([shop('90')], nothing);
    expect(await storedAt('shop')).toEqual(shop('90'));
    expect(await storedAt(`aside/shop/${shop().changed}`)).toEqual({
      kind: 'shop',
      format: FORMAT,
      kit: null,
    });
  });
});
