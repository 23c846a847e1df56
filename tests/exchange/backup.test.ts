import { gzipSync } from 'node:zlib';
import fc from 'fast-check';
import { beforeEach, describe, expect, it } from 'vitest';
import { backUp } from '../../src/exchange/backup/back-up';
import { readBackup } from '../../src/exchange/backup/read-backup';
import { lookOver, mergeBackup } from '../../src/exchange/backup/restore';
import { writeBackup } from '../../src/exchange/backup/write-backup';
import { canonical } from '../../src/exchange/merge/canonical';
import type { KeptRecord } from '../../src/exchange/shape/records';
import { everythingEntered } from '../../src/store/in-bulk';
import { save } from '../../src/store/shop-store';
import { emptyDatabase, putAnything, storedAt, storedKeys } from '../store/support/database';
import { inspection, part, shop, work } from '../store/support/samples';
import { relatedShops, shopRecords } from './support/shops';

const HEAD = { made: '2024-03-05T14:07:00.000Z', app: '0.1.0' };

beforeEach(emptyDatabase);

async function stored(): Promise<unknown[]> {
  const all: unknown[] = [];
  for await (const group of everythingEntered()) all.push(...group);
  return all.sort((a, b) => (canonical(a) < canonical(b) ? -1 : 1));
}

const backup = () => backUp(HEAD, () => {});

function fileOf(...records: readonly unknown[]): Promise<Blob> {
  async function* groups() {
    yield records;
  }
  return writeBackup(HEAD, groups());
}

describe('a backup', () => {
  it('brings back exactly what was there, shops of many shapes', async () => {
    await fc.assert(
      fc.asyncProperty(shopRecords, async (records) => {
        await emptyDatabase();
        await save(records);
        const before = await stored();
        const file = await backup();
        await emptyDatabase();
        await mergeBackup(file);
        expect(await stored()).toEqual(before);
      }),
      { numRuns: 50 },
    );
  });

  it('of one device merged into another comes to the same as the other way round', async () => {
    await fc.assert(
      fc.asyncProperty(relatedShops(2), async ([one = [], other = []]) => {
        const comeTo = async (here: KeptRecord[], there: KeptRecord[]) => {
          await emptyDatabase();
          await save(there);
          const file = await backup();
          await emptyDatabase();
          await save(here);
          await mergeBackup(file);
          const once = await stored();
          await mergeBackup(file);
          expect(await stored()).toEqual(once);
          return once;
        };
        expect(await comeTo(one, other)).toEqual(await comeTo(other, one));
      }),
      { numRuns: 40 },
    );
  });

  it('is JSON once unpacked, whatever its length', async () => {
    const parts = Array.from({ length: 450 }, (_, index) => part(`p${index}`));
    await save([...parts, shop()]);
    const unpacked = (await backup()).stream().pipeThrough(new DecompressionStream('gzip'));
    const read = JSON.parse(await new Response(unpacked).text());
    expect(read).toMatchObject({ highedge: 'backup', version: 1, ...HEAD, count: 451 });
    expect(read.records).toHaveLength(451);
    expect(JSON.parse(await unpackedText(await fileOf()))).toMatchObject({ records: [], count: 0 });
  });

  it('holds what was worked out from records no more than recovery copies', async () => {
    await save([part('p')]);
    await putAnything('summary/p', { kind: 'summary' });
    await putAnything('recovery', { made: HEAD.made });
    expect(await stored()).toEqual([part('p')]);
  });

  it('opens unpacked too', async () => {
    const text = await unpackedText(await fileOf(part('p')));
    await mergeBackup(new Blob([text]));
    expect(await stored()).toEqual([part('p')]);
  });
});

function unpackedText(file: Blob): Promise<string> {
  return new Response(file.stream().pipeThrough(new DecompressionStream('gzip'))).text();
}

function packed(text: string): Blob {
  return new Blob([new Uint8Array(gzipSync(text))]);
}

describe('looking a backup over', () => {
  it('tells what merging would do, and does none of it', async () => {
    const late = { ...part('b', 'Late'), changed: '2024-03-09T00:00:00.000Z' };
    const state = { ...part('c', 'Late'), changed: '2024-03-09T00:00:00.000Z' };
    await save([part('a'), part('b'), state]);
    const before = await stored();
    const file = await fileOf(
      part('a'),
      late,
      part('c'),
      part('d'),
      inspection('i', 'd'),
      work('w', 'd'),
    );
    const overview = await lookOver(file);
    expect(overview).toMatchObject({ head: HEAD, good: 6, bad: 0, examples: [] });
    expect(overview.tally).toEqual({
      added: { part: 1, inspection: 1, work: 1, shop: 0 },
      ...{ same: 1, laterInFile: 1, laterHere: 1, moreVersions: 0, untouched: 0 },
    });
    expect(await stored()).toEqual(before);
    expect(await mergeBackup(file)).toEqual(overview.tally);
    expect((await lookOver(file)).tally).toMatchObject({ same: 6, laterInFile: 0, laterHere: 0 });
    expect(await storedAt('part/b')).toEqual(late);
    expect(await storedAt(`version/part/b/${part('b').changed}`)).toMatchObject({
      record: part('b'),
    });
  });

  it('names every bad record by its line and reads the others', async () => {
    const file = await fileOf(part('a'), { ...part('b'), example: 'yes' }, 'text', part('c'));
    const overview = await lookOver(file);
    expect(overview).toMatchObject({ good: 2, bad: 2 });
    expect(overview.examples).toEqual([
      { line: 3, message: expect.stringMatching(/^example: expected boolean, found "yes"$/) },
      { line: 4, message: expect.stringMatching(/no record/) },
    ]);
    await mergeBackup(file);
    const kept = (await storedKeys()).filter((key) => !String(key).startsWith('merged/'));
    expect(kept).toEqual(['part/a', 'part/c']);
  });

  it('leaves alone what it cannot read here: it may be of a newer version', async () => {
    const newer = { ...part('p'), format: 99 };
    await putAnything('part/p', newer);
    expect((await lookOver(await fileOf(part('p')))).tally).toMatchObject({ untouched: 1 });
    await mergeBackup(await fileOf(part('p')));
    expect(await storedAt('part/p')).toEqual(newer);
  });

  it('has what was worked out from changed records worked out again', async () => {
    await putAnything('summary/p', { kind: 'summary' });
    await mergeBackup(await fileOf(inspection('i', 'p')));
    expect(await storedKeys()).not.toContain('summary/p');
  });
});

describe('a file that is refused as a whole', () => {
  const text = async (...records: unknown[]) => unpackedText(await fileOf(...records));
  const refused = (file: Blob) => expect(lookOver(file)).rejects;

  it.each([
    ['nothing', ''],
    ['some text', 'part;reading\n1;2'],
    ['other JSON', '{"records":[]}'],
    ['a list', '[]'],
    ['null', 'null\n'],
  ])('%s', async (_, content) => {
    await refused(new Blob([content])).toThrow(/no backup of Highedge|empty/);
    await refused(packed(content)).toThrow(/no backup of Highedge|empty/);
  });

  it('one from a newer version', async () => {
    const newer = (await text(part('p'))).replace('"version":1', '"version":2');
    await refused(new Blob([newer])).toThrow(/newer version/);
  });

  it('one that was cut short, at any place', async () => {
    const whole = new Uint8Array(await (await fileOf(part('p'), shop())).arrayBuffer());
    for (let length = 1; length < whole.length; length += 7) {
      await refused(new Blob([whole.slice(0, length)])).toThrow();
    }
    const plain = await text(part('p'), shop());
    for (let length = 1; length < plain.length - 1; length += 97) {
      await refused(new Blob([plain.slice(0, length)])).toThrow();
    }
  });

  it('one in which a byte was changed on the way', async () => {
    const whole = new Uint8Array(await (await fileOf(part('p'), shop())).arrayBuffer());
    const changed = whole.map((byte, index) => (index === whole.length >> 1 ? byte ^ 0x55 : byte));
    await refused(new Blob([changed])).toThrow();
  });

  it('one with more or fewer records than it says, or with something behind its end', async () => {
    const plain = await text(part('p'));
    await refused(new Blob([plain.replace('"count":1', '"count":2')])).toThrow(/another number/);
    await refused(new Blob([`${plain}more\n`])).toThrow(/after its end/);
  });

  it('one that is no text', async () => {
    await refused(new Blob([new Uint8Array([0xff, 0xfe, 0xc0, 0x0a])])).toThrow(/no text/);
  });
});

describe('a file that unpacks to more than a device can hold', () => {
  const all = async (file: Blob, limits: { line: number; bytes: number }) => {
    for await (const _ of readBackup(file, limits));
  };

  it('is left as soon as a line is longer than any record', async () => {
    const bomb = packed('a'.repeat(30_000_000));
    expect(bomb.size).toBeLessThan(100_000);
    await expect(lookOver(bomb)).rejects.toThrow(/longer than any record/);
  });

  it('is left as soon as it is longer than any backup', async () => {
    const file = await fileOf(...Array.from({ length: 500 }, (_, index) => part(`p${index}`)));
    await expect(all(file, { line: 10_000, bytes: 50_000 })).rejects.toThrow(
      /more than any backup/,
    );
    await expect(all(file, { line: 10_000, bytes: 500_000 })).resolves.toBeUndefined();
  });
});
