import fc from 'fast-check';
import { promisifyRequest } from 'idb-keyval';
import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { chain, openChain } from '../../src/state/chain';
import { openShop } from '../../src/state/open-shop';
import { changeSetups } from '../../src/state/plate-changes';
import { keep, refusal, savingState, TRY_AGAIN, unsaved } from '../../src/state/saving';
import { putPart } from '../../src/state/shop';
import { unsavedFile } from '../../src/state/unsaved-file';
import { keyOf } from '../../src/store/keys';
import type { InspectionRecord, StoredRecord } from '../../src/store/records';
import { loadChain, loadParts, save } from '../../src/store/shop-store';
import { noseSetup } from '../entry/support/setups';
import { connection, emptyDatabase, storedAt, storedKeys } from '../store/support/database';
import { inspection, part } from '../store/support/samples';
import { saving, startAfresh } from './support/fresh';

beforeEach(async () => {
  await startAfresh();
  vi.spyOn(console, 'error').mockImplementation(() => undefined);
});
afterEach(async () => {
  vi.restoreAllMocks();
  keep([part('last')]);
  await saving('saved');
});

const put = IDBObjectStore.prototype.put;

/** What is done in each put from now on, after it was asked for. */
function whenPut(then: (store: IDBObjectStore, key: string) => void): void {
  vi.spyOn(IDBObjectStore.prototype, 'put').mockImplementation(function (
    this: IDBObjectStore,
    ...values
  ) {
    const request = put.apply(this, values);
    then(this, String(values[1]));
    return request;
  });
}

/** A browser without room left aborts the transaction; no request fails. */
function abortAsFull(transaction: IDBTransaction): void {
  Object.assign(transaction, { error: new DOMException('No room', 'QuotaExceededError') });
  transaction.abort();
}

/** Until what was refused is tried again by itself. */
async function triedAgain(): Promise<void> {
  await vi.waitFor(() => expect(savingState.value).toBe('saved'), { timeout: 3 * TRY_AGAIN });
}

describe('a connection that dies in the midst of a write', () => {
  it('is told at once, leaves nothing half-written, and the write is done again by itself', async () => {
    await save([part('p', 'Before')]);
    let isDead = false;
    whenPut(({ transaction }, key) => {
      if (key !== 'part/q' || isDead) return;
      isDead = true;
      // What a browser does that closes it: the transaction is given up, and nothing can be begun.
      transaction.abort();
      transaction.db.close();
    });
    keep([part('p', 'After'), part('q')]);
    await saving('not saved');
    expect(refusal.value).toBe('refused');
    expect(unsaved()).toEqual([part('p', 'After'), part('q')]);
    expect((await loadParts()).records).toEqual([part('p', 'Before')]);
    await triedAgain();
    expect((await loadParts()).records).toEqual([part('p', 'After'), part('q')]);
  });

  it('whose end is told late does not end the one that was opened after it', async () => {
    const dead = await connection();
    dead.close();
    const next = await connection();
    dead.onclose?.(new Event('close'));
    expect(await connection()).toBe(next);
  });
});

/** What a window is told when another one asks for a newer version. */
const NEWER = { oldVersion: 1, newVersion: 2 } as IDBVersionChangeEvent;

describe('another window with a newer version', () => {
  it('waits for the write under way; the next is told as refused, and can be taken out as a file', async () => {
    const db = await connection();
    keep([part('p')]);
    // It is asked to close while that is being written.
    db.onversionchange?.(NEWER);
    await saving('saved');
    expect(await storedKeys()).toEqual(['part/p']);
    const blocked = new DOMException('A newer one is here', 'VersionError');
    vi.spyOn(indexedDB, 'open').mockImplementation(() => {
      throw blocked;
    });
    (await connection().catch(() => undefined))?.close();
    keep([part('q', 'Typed')]);
    await saving('not saved');
    expect(refusal.value).toBe('newer app');
    const text = await new Response(
      (await unsavedFile()).stream().pipeThrough(new DecompressionStream('gzip')),
    ).text();
    expect(text).toContain('Typed');
  });
});

describe('a database that is opened in vain', () => {
  it('blocked by another window, is told and tried again by itself', async () => {
    (await connection()).close();
    const open = indexedDB.open.bind(indexedDB);
    vi.spyOn(indexedDB, 'open').mockImplementationOnce((...asked) => {
      const request = open(...asked);
      queueMicrotask(() => request.onblocked?.(NEWER));
      return request;
    });
    keep([part('blocked')]);
    await saving('not saved');
    expect(refusal.value).toBe('blocked');
    await triedAgain();
    expect(await storedKeys()).toEqual(['part/blocked']);
  });

  it('without the store that it should have, is told; what was typed waits in the page', async () => {
    await promisifyRequest(indexedDB.deleteDatabase('highedge'));
    (await promisifyRequest(indexedDB.open('highedge', 1))).close();
    keep([part('storeless')]);
    await saving('not saved');
    expect(refusal.value).toBe('refused');
    expect(unsaved()).toEqual([part('storeless')]);
    // Once it is done away with, the next one is made whole.
    await promisifyRequest(indexedDB.deleteDatabase('highedge'));
    await triedAgain();
    expect(await storedKeys()).toEqual(['part/storeless']);
  });
});

describe('a disk that fills up', () => {
  it('at whatever write, never leaves half of what belongs together, and all is there in the end', async () => {
    const groups = fc.array(fc.uniqueArray(fc.nat(3), { minLength: 1, maxLength: 3 }), {
      minLength: 1,
      maxLength: 8,
    });
    const puts = fc.uniqueArray(fc.nat(12), { maxLength: 5 });
    let run = 0;
    await fc.assert(
      fc.asyncProperty(groups, puts, async (all, refusedPuts) => {
        run += 1;
        await emptyDatabase();
        let count = -1;
        whenPut(({ transaction }) => {
          count += 1;
          if (refusedPuts.includes(count)) abortAsFull(transaction);
        });
        const latest = new Map<string, StoredRecord>();
        for (const [number, ids] of all.entries()) {
          const group = ids.map((id) => part(`${run} ${id}`, `${number}`));
          keep(group);
          for (const record of group) latest.set(keyOf(record), record);
          await vi.waitFor(() => expect(savingState.value).not.toBe('saving'));
          const lying = await Promise.all(group.map((record) => storedAt(keyOf(record))));
          // Of one group either all are the new ones, or none is.
          const isNew = lying.map((value, i) => isSameText(value, group[i]));
          expect(new Set(isNew).size).toBe(1);
          if (savingState.value === 'saved') expect(isNew[0]).toBe(true);
        }
        vi.mocked(IDBObjectStore.prototype.put).mockRestore();
        keep([part(`${run} more`)]);
        await saving('saved');
        for (const [key, record] of latest) expect(await storedAt(key)).toEqual(record);
      }),
      { numRuns: 30 },
    );
  });
});

function isSameText(one: unknown, other: unknown): boolean {
  return JSON.stringify(one) === JSON.stringify(other);
}

describe('what was erased under the hands of somebody who types', () => {
  it('is brought back with all that belongs to it, as the page holds it', async () => {
    const read: InspectionRecord = { ...inspection('i', 'block'), setups: [noseSetup()] };
    const before = inspection('before', 'block');
    await save([part('block', 'Sine bar'), part('other'), before, read]);
    await openShop();
    await openChain('block');
    await emptyDatabase();
    const shown = chain.value?.links.find(({ id }) => id === 'i') as InspectionRecord;
    const typed = noseSetup({ right: '77' });
    changeSetups(shown, () => [typed]);
    await vi.waitFor(async () => {
      expect(savingState.value).toBe('saved');
      expect((await loadParts()).records).toEqual([part('block', 'Sine bar')]);
    });
    const { records } = await loadChain('block');
    expect(records.map(({ id }) => id)).toEqual(['before', 'i']);
    expect(records[1]).toMatchObject({ setups: [typed] });
  });

  it('ends: a part that is erased again while it is brought back is there once more', async () => {
    await save([part('again')]);
    await openShop();
    await emptyDatabase();
    putPart(part('again', 'Typed'));
    await vi.waitFor(async () => {
      expect(unsaved()).toEqual([]);
      expect((await loadParts()).records).toEqual([part('again', 'Typed')]);
    });
  });
});
