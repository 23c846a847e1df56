import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { newItem } from '../../src/entry/instruments';
import { checkRecord } from '../../src/exchange/shape/check-record';
import type { StoredRecord } from '../../src/store/records';
import { loadParts } from '../../src/store/shop-store';
import { readStored } from '../../src/store/whole/read-stored';
import { isWhole } from '../../src/store/whole/records';
import { shopRecords } from '../exchange/support/shops';
import { emptyDatabase, putAnything } from './support/database';
import { inspection, part, shop, summary, work } from './support/samples';

/** Texts that are told apart from others by what they may hold: files are held to that, stored records are not. */
const IDS = /^(id|inspection|part|after|of|requirement)$/;

/** Ways to each value in `value`, however deep. */
function waysIn(value: unknown, way: readonly string[] = []): readonly (readonly string[])[] {
  if (typeof value !== 'object' || value === null) return [way];
  const inner = Object.entries(value).flatMap(([name, one]) => waysIn(one, [...way, name]));
  return way.length === 0 ? inner : [way, ...inner];
}

const GONE = Symbol('gone');

/** `value` with `torn` in place of what is at the end of the way. */
function tornAt(value: unknown, [name = '', ...further]: readonly string[], torn: unknown) {
  const copy = structuredClone(value) as Record<string, unknown>;
  if (further.length > 0) copy[name] = tornAt(copy[name], further, torn);
  else if (torn !== GONE) copy[name] = torn;
  else if (Array.isArray(copy)) copy.splice(Number(name), 1);
  else delete copy[name];
  return copy;
}

const TORN = [GONE, null, {}, [[]], [], 7, true, 'no such word'];

const samples = fc.oneof(
  shopRecords,
  fc.constant<StoredRecord[]>([
    { ...work('w', 'p'), notLearned: { at: '2024-03-05T14:07:00.000Z' } },
    {
      ...shop(),
      drawer: (
        ['indicator', 'comparator', 'column', 'micrometer', 'plate', 'abrasive'] as const
      ).map((kind) => newItem(kind, () => kind)),
    },
  ]),
);

describe('what the app goes by in a record', () => {
  it('is there in every record that it writes', () => {
    fc.assert(
      fc.property(samples, (records) => {
        for (const record of records) expect(isWhole(record)).toBe(true);
      }),
    );
    expect(isWhole(summary('p'))).toBe(true);
    const standing = { probabilities: [0.5], notFixed: 1, read: summary('p').made };
    expect(isWhole({ ...summary('p'), standing })).toBe(true);
    expect(isWhole({ ...summary('p'), standing: { ...standing, probabilities: [null] } })).toBe(
      false,
    );
  });

  it('is missed wherever a file with the same tear would be refused, however deep it is', () => {
    let seen = 0;
    fc.assert(
      fc.property(samples, fc.nat(), fc.constantFrom(...TORN), (records, step, torn) => {
        for (const record of records) {
          const ways = waysIn(record);
          const way = ways[step % ways.length] ?? [];
          if (IDS.test(way.at(-1) ?? '') && typeof torn === 'string') continue;
          const damaged = tornAt(record, way, torn);
          if (checkRecord(damaged).ok) continue;
          seen += 1;
          expect(readStored(damaged).ok, `${way.join(' › ')} ${String(torn)}`).toBe(false);
        }
      }),
      { numRuns: 3000 },
    );
    expect(seen).toBeGreaterThan(1000);
  });

  it('is not asked of what a later version may have added', () => {
    const more = { ...part('p'), entry: { ...part('p').entry, more: 1 }, more: [1] };
    expect(readStored(more)).toEqual({ ok: true, record: more });
  });
});

describe('a record that is torn inside', () => {
  it('is set aside and named, and the rest opens', async () => {
    await emptyDatabase();
    const torn = { ...part('torn', 'Torn block'), entry: { name: 'Torn block', size: { x: {} } } };
    await putAnything('part/good', part('good'));
    await putAnything('part/torn', torn);
    await putAnything('part/elsewhere', part('other', 'Not at its place'));
    expect(await loadParts()).toEqual({
      records: [part('good')],
      unread: [
        { key: 'part/elsewhere', reason: 'damaged', name: 'Not at its place' },
        { key: 'part/torn', reason: 'damaged', name: 'Torn block' },
      ],
    });
    expect(isWhole(inspection('i', 'p'))).toBe(true);
  });
});
