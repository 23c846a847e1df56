import { promisifyRequest } from 'idb-keyval';
import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { records } from '../../src/store/database';
import { loadParts, save } from '../../src/store/shop-store';
import { emptyDatabase, storedKeys } from './support/database';
import { part, uncloneable } from './support/samples';

beforeEach(emptyDatabase);
afterEach(() => {
  vi.restoreAllMocks();
});

describe('of the records of one save', () => {
  it.each([
    ['first', [uncloneable('bad'), part('p'), part('q')]],
    ['in the middle', [part('p'), uncloneable('bad'), part('q')]],
    ['last', [part('p'), part('q'), uncloneable('bad')]],
  ])('none is kept where one cannot be stored: %s', async (_, changed) => {
    await expect(save(changed)).rejects.toThrow(/clone/i);
    expect(await storedKeys()).toEqual([]);
  });

  it('none is kept where the disk is full in the middle', async () => {
    const put = IDBObjectStore.prototype.put;
    vi.spyOn(IDBObjectStore.prototype, 'put').mockImplementation(function (
      this: IDBObjectStore,
      ...values
    ) {
      const request = put.apply(this, values);
      // A browser without room left aborts the transaction; no request fails.
      if (values[1] === 'part/q') this.transaction.abort();
      return request;
    });
    await expect(save([part('p'), part('q')])).rejects.toBeDefined();
    vi.restoreAllMocks();
    expect(await storedKeys()).toEqual([]);
  });

  it('the old values stay where the new ones cannot be stored', async () => {
    await save([part('p', 'Before'), part('q', 'Before')]);
    await expect(save([part('p', 'After'), uncloneable('q')])).rejects.toThrow();
    const { records: kept } = await loadParts();
    expect(kept).toEqual([part('p', 'Before'), part('q', 'Before')]);
  });
});

describe('a transaction that fails', () => {
  it('rejects', async () => {
    const failing = records('readwrite', (store) => {
      store.put(part('p'), 'part/p');
      const done = promisifyRequest(store.transaction);
      store.transaction.abort();
      return done;
    });
    await expect(failing).rejects.toBe(null); // abort() by hand has no error of its own
    expect(await storedKeys()).toEqual([]);
  });

  it('does not stand in the way of the next one', async () => {
    await expect(save([uncloneable('bad')])).rejects.toThrow();
    await save([part('p')]);
    expect(await storedKeys()).toEqual(['part/p']);
  });
});
