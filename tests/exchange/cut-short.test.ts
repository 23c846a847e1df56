import { IDBObjectStore } from 'fake-indexeddb';
import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { writeBackup } from '../../src/exchange/backup/write-backup';
import { doJob } from '../../src/exchange/jobs';
import type { PutBack } from '../../src/exchange/merge/put-back';
import { loadBegunMerge } from '../../src/store/begun-merge';
import { loadRecoveryCopy } from '../../src/store/recovery';
import { loadParts, save } from '../../src/store/shop-store';
import { emptyDatabase, putAnything } from '../store/support/database';
import { inspection, part } from '../store/support/samples';

const HEAD = { made: '2024-03-05T14:07:00.000Z', app: '0.1.0' };
const MANY = 1200;

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
  failAfter(700);
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

it('a merge that the first version had begun is told, and ends', async () => {
  await putAnything('merging', { at: HEAD.made, file: 'many.highedge' });
  expect(await loadBegunMerge()).toEqual({ at: HEAD.made, file: 'many.highedge' });
  await merge();
  expect(await loadBegunMerge()).toBeUndefined();
});

it('what is damaged of a begun merge is told as one all the same', async () => {
  await putAnything('merging', { at: 'never', file: 7 });
  expect(await loadBegunMerge()).toEqual({ at: '1970-01-01T00:00:00.000Z', file: '7' });
});

describe('what was here before a merge that was cut short', () => {
  const LATER = { ...HEAD, made: '2024-03-06T14:07:00.000Z' };
  const putBack = async () => {
    return (await doJob({ kind: 'put back', at: '2024-05-01T10:00:00.000Z' }, () => {})) as PutBack;
  };
  const mergeLater = async (file: File) => doJob({ kind: 'merge', file, head: LATER }, () => {});
  const mine = { ...part('p7', 'Mine'), changed: '2024-03-01T00:00:00.000Z' };

  beforeEach(async () => {
    await save([mine, inspection('i', 'p7')]);
    failAfter(700);
    await expect(merge()).rejects.toThrow();
    vi.restoreAllMocks();
  });

  it('is kept until the whole of it is in, and put back then', async () => {
    await mergeLater(await manyParts());
    expect(await loadRecoveryCopy()).toMatchObject({ made: HEAD.made });
    expect(await putBack()).toEqual({ asBefore: 1, removed: MANY - 1, goneOn: 0 });
    const { records } = await loadParts();
    const there = records.filter(({ removed }) => removed === undefined);
    expect(there.map(({ entry }) => entry.name)).toEqual(['Mine']);
  });

  it('is kept too where another file is merged meanwhile, and the first stays told', async () => {
    const other = new File([await (await manyParts()).arrayBuffer()], 'other.highedge');
    await mergeLater(other);
    expect(await loadRecoveryCopy()).toMatchObject({ made: HEAD.made });
    expect(await loadBegunMerge()).toEqual({ at: HEAD.made, file: 'many.highedge' });
  });

  it('is put back also while it is not finished, which then is no more told', async () => {
    expect((await putBack()).asBefore).toBe(1);
    expect(await loadBegunMerge()).toBeUndefined();
    await mergeLater(await manyParts());
    expect(await loadRecoveryCopy()).toMatchObject({ made: LATER.made });
  });
});
