import fc from 'fast-check';
import { beforeEach, describe, expect, it } from 'vitest';
import { backUp } from '../../src/exchange/backup/back-up';
import { doJob } from '../../src/exchange/jobs';
import { canonical } from '../../src/exchange/merge/canonical';
import type { PutBack } from '../../src/exchange/merge/put-back';
import { everythingEntered } from '../../src/store/in-bulk';
import { keyOf } from '../../src/store/keys';
import type { EnteredRecord, StoredRecord } from '../../src/store/records';
import { save } from '../../src/store/shop-store';
import { emptyDatabase } from '../store/support/database';
import { inspection, part, shop, work } from '../store/support/samples';
import { relatedShops } from './support/shops';

const HEAD = { made: '2024-03-05T14:07:00.000Z', app: '0.1.0' };
const AT = '2024-05-01T10:00:00.000Z';

beforeEach(emptyDatabase);

/** A device with `records`, as a backup file. */
async function fileOf(records: readonly StoredRecord[]): Promise<File> {
  await emptyDatabase();
  await save(records);
  const file = new File([await backUp(HEAD, () => {})], 'other.highedge');
  await emptyDatabase();
  return file;
}

const merge = (file: File) => doJob({ kind: 'merge', file, head: HEAD }, () => {});
const putBack = async () => (await doJob({ kind: 'put back', at: AT }, () => {})) as PutBack;

/** All records but earlier states, by their keys, and every state that is kept of any. */
async function stored() {
  const all: StoredRecord[] = [];
  for await (const group of everythingEntered()) all.push(...(group as StoredRecord[]));
  const now = all.filter((one): one is EnteredRecord => {
    return one.kind !== 'version' && one.kind !== 'summary';
  });
  const earlier = all.flatMap((one) => (one.kind === 'version' ? [one.record] : []));
  const states = new Set([...now, ...earlier].map(contentOf));
  return { now: new Map(now.map((one) => [keyOf(one), one])), states };
}

/** A record but for when it was changed or removed. */
const contentOf = (record: EnteredRecord) => {
  const { changed: _, ...content } = record;
  return canonical('removed' in content ? { ...content, removed: undefined } : content);
};

describe('what was here before a merge', () => {
  it('is put back, whatever shops were merged, and no state of anything is lost', async () => {
    await fc.assert(
      fc.asyncProperty(relatedShops(2), async ([here = [], there = []]) => {
        const file = await fileOf(there);
        await save(here);
        const before = await stored();
        await merge(file);
        const merged = await stored();
        const { goneOn } = await putBack();
        const after = await stored();
        expect(goneOn).toBe(0);
        for (const [key, record] of before.now) {
          expect(contentOf(after.now.get(key)!)).toBe(contentOf(record));
        }
        // What came with the merge alone is on the shelf of removed parts, or an earlier state.
        for (const [key, record] of after.now) {
          if (before.now.has(key) || record.kind === 'shop') continue;
          const own = record.kind === 'part' ? record.id : record.part;
          const its = after.now.get(`part/${own}`);
          expect(its === undefined || (its.kind === 'part' && its.removed !== undefined)).toBe(
            true,
          );
        }
        for (const state of merged.states) expect(after.states).toContain(state);
      }),
      { numRuns: 60 },
    );
  });

  it('is not put back where somebody has gone on with the part since', async () => {
    const file = await fileOf([
      { ...part('p', 'Theirs'), changed: '2024-03-06T00:00:00.000Z' },
      inspection('theirs', 'p'),
      part('q', 'Also theirs'),
    ]);
    await save([part('p', 'Mine'), part('r', 'Untouched')]);
    await merge(file);
    const since = { ...work('since', 'p'), changed: '2024-04-01T00:00:00.000Z' };
    await save([since]);
    expect(await putBack()).toEqual({ asBefore: 0, removed: 1, goneOn: 1 });
    const { now } = await stored();
    expect([...now.keys()].sort()).toEqual([
      'chain/p/inspection/theirs',
      'chain/p/work/since',
      'part/p',
      'part/q',
      'part/r',
    ]);
    expect(now.get('part/p')).toMatchObject({ entry: { name: 'Theirs' } });
    expect(now.get('part/q')).toMatchObject({ removed: { at: AT } });
  });

  it('is put back once: a second time there is nothing to do, and the file can be merged again', async () => {
    const theirs = { ...part('p', 'Theirs'), changed: '2030-01-01T00:00:00.000Z' };
    const file = await fileOf([
      theirs,
      inspection('i', 'p'),
      { ...shop('90'), changed: theirs.changed },
    ]);
    await save([part('p', 'Mine'), shop('95')]);
    await merge(file);
    expect(await putBack()).toEqual({ asBefore: 2, removed: 0, goneOn: 0 });
    const once = await stored();
    // Also where the other device's clock was ahead, the state put back is the later one.
    expect(once.now.get('part/p')?.changed).toBe('2030-01-01T00:00:00.001Z');
    expect(once.now.has('chain/p/inspection/i')).toBe(false);
    expect(await putBack()).toEqual({ asBefore: 0, removed: 0, goneOn: 0 });
    expect(await stored()).toEqual(once);
    await merge(file);
    expect((await stored()).now.has('chain/p/inspection/i')).toBe(true);
  });
});
