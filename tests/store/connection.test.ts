import { forceCloseDatabase } from 'fake-indexeddb';
import { promisifyRequest } from 'idb-keyval';
import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { loadParts, save } from '../../src/store/shop-store';
import { StorageError } from '../../src/store/storage-error';
import { connection, emptyDatabase, storedKeys } from './support/database';
import { part } from './support/samples';

beforeEach(emptyDatabase);
afterEach(() => {
  vi.restoreAllMocks();
});

/** Opens the database as another tab would, perhaps one with a newer version of the app. */
async function openInAnotherTab(version: number): Promise<IDBDatabase> {
  return promisifyRequest(indexedDB.open('highedge', version));
}

describe('the connection', () => {
  it('is opened once for many records', async () => {
    const first = await connection();
    await save([part('p')]);
    await loadParts();
    expect(await connection()).toBe(first);
  });

  it('is opened again where it died while the phone slept', async () => {
    const dead = await connection();
    await save([part('p')]);
    dead.close();
    await save([part('q')]);
    expect(await storedKeys()).toEqual(['part/p', 'part/q']);
    expect(await connection()).not.toBe(dead);
  });

  it('keeps the order of writes that all meet it dead', async () => {
    (await connection()).close();
    const names = ['One', 'Two', 'Three'];
    await Promise.all(names.map((name) => save([part('p', name)])));
    expect((await loadParts()).records).toEqual([part('p', 'Three')]);
  });

  it('is opened again where the browser said that it closed it', async () => {
    const closed = await connection();
    const told = new Promise((resolve) => {
      closed.addEventListener('close', resolve);
    });
    forceCloseDatabase(closed as never); // its type asks for the class, it wants the connection
    await told;
    const begin = vi.spyOn(closed, 'transaction');
    await save([part('p')]);
    expect(await storedKeys()).toEqual(['part/p']);
    expect(begin).not.toHaveBeenCalled();
  });

  it('that fails for another reason is not opened again, and the write rejects', async () => {
    const open = await connection();
    const opened = vi.spyOn(indexedDB, 'open');
    vi.spyOn(open, 'transaction').mockImplementation(() => {
      throw new DOMException('No such store', 'NotFoundError');
    });
    await expect(save([part('p')])).rejects.toThrow('No such store');
    expect(opened).not.toHaveBeenCalled();
  });

  it('that will not open rejects, and is tried again by the next write', async () => {
    (await connection()).close();
    vi.spyOn(indexedDB, 'open').mockImplementation(() => {
      throw new DOMException('Storage is forbidden here', 'SecurityError');
    });
    await expect(save([part('p')])).rejects.toThrow('Storage is forbidden here');
    vi.restoreAllMocks();
    await save([part('q')]);
    expect(await storedKeys()).toEqual(['part/q']);
  });
});

describe('another tab', () => {
  it('may do away with the database, and the next write begins a new one', async () => {
    await save([part('p')]);
    await promisifyRequest(indexedDB.deleteDatabase('highedge'));
    await save([part('q')]);
    expect(await storedKeys()).toEqual(['part/q']);
  });

  it('with a newer version may upgrade, and writes from here are then refused', async () => {
    await save([part('p')]);
    const newer = await openInAnotherTab(2);
    const refused = save([part('q')]);
    await expect(refused).rejects.toThrow(StorageError);
    await expect(refused).rejects.toThrow('The database will not open');
    const keys = newer.transaction('records').objectStore('records').getAllKeys();
    expect(await promisifyRequest(keys)).toEqual(['part/p']);
    newer.close();
    await promisifyRequest(indexedDB.deleteDatabase('highedge'));
  });
});
