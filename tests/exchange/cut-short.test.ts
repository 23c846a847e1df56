import { IDBObjectStore } from 'fake-indexeddb';
import { afterEach, beforeEach, expect, it, vi } from 'vitest';
import { writeBackup } from '../../src/exchange/backup/write-backup';
import { doJob } from '../../src/exchange/jobs';
import { loadBegunMerge } from '../../src/store/begun-merge';
import { loadRecoveryCopy } from '../../src/store/recovery';
import { loadParts } from '../../src/store/shop-store';
import { emptyDatabase, putAnything } from '../store/support/database';
import { part } from '../store/support/samples';

const HEAD = { made: '2024-03-05T14:07:00.000Z', app: '0.1.0' };
const MANY = 450;

beforeEach(emptyDatabase);
afterEach(() => vi.restoreAllMocks());

async function manyParts(): Promise<File> {
  async function* groups() {
    yield Array.from({ length: MANY }, (_, index) => part(`p${index}`));
  }
  return new File([await writeBackup(HEAD, groups())], 'many.highedge');
}

const merge = async () => doJob({ kind: 'merge', file: await manyParts(), head: HEAD }, () => {});

/** The disk is full once so many records are written. */
function failAfter(records: number): void {
  const put = IDBObjectStore.prototype.put;
  let left = records;
  vi.spyOn(IDBObjectStore.prototype, 'put').mockImplementation(function (
    this: IDBObjectStore,
    ...args
  ) {
    left -= 1;
    if (left < 0) throw new DOMException('Full', 'QuotaExceededError');
    return put.apply(this, args);
  });
}

it('a merge that came to its end is not told as begun', async () => {
  await merge();
  expect(await loadBegunMerge()).toBeUndefined();
  expect(await loadRecoveryCopy()).toMatchObject({ made: HEAD.made });
});

it('a merge that was cut short is told until the same file is merged again', async () => {
  failAfter(300);
  await expect(merge()).rejects.toThrow();
  vi.restoreAllMocks();
  const { length } = (await loadParts()).records;
  expect(length).toBeGreaterThan(0);
  expect(length).toBeLessThan(MANY);
  expect(await loadBegunMerge()).toEqual({ at: HEAD.made, file: 'many.highedge' });
  await merge();
  expect((await loadParts()).records).toHaveLength(MANY);
  expect(await loadBegunMerge()).toBeUndefined();
});

it('what is damaged of a begun merge is told as one all the same', async () => {
  await putAnything('merging', { at: 'never', file: 7 });
  expect(await loadBegunMerge()).toEqual({ at: '1970-01-01T00:00:00.000Z', file: '7' });
});
