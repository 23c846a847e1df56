import { beforeEach, describe, expect, it } from 'vitest';
import { chain, openChain } from '../../src/state/chain';
import { duplicate } from '../../src/state/duplicate';
import { eraseForGood } from '../../src/state/erase-for-good';
import { openShop } from '../../src/state/open-shop';
import {
  archive,
  lastRemoved,
  putBackPart,
  removePart,
  takeOutOfArchive,
} from '../../src/state/shelves';
import { parts } from '../../src/state/shop';
import { summaries } from '../../src/state/summaries';
import { keyOf } from '../../src/store/keys';
import {
  loadChain,
  loadParts,
  loadSummaries,
  loadVersions,
  save,
} from '../../src/store/shop-store';
import { inspection, part, summary, version } from '../store/support/samples';
import { saving, startAfresh } from './support/fresh';
import { BLOCK, compared } from './support/inspections';

const FLAT = [{ id: 'bottom flat', face: 'bottom', tolerance: BLOCK.size.x }] as const;
const PART = { ...part('p'), entry: { ...BLOCK, flatness: FLAT } };
const OTHER = part('p1', 'Another');

beforeEach(async () => {
  await startAfresh();
  summaries.value = new Map();
  await save([
    PART,
    OTHER,
    compared('i', '34', '31'),
    version(inspection('i', 'p')),
    summary('p'),
    inspection('j', 'p1'),
    version(inspection('j', 'p1')),
  ]);
  await openShop();
});

const now = () => parts.value.get('p')!;

describe('a part', () => {
  it('goes into the archive and comes out as it was', async () => {
    archive(PART);
    expect(now().archived?.at).toBe(now().changed);
    takeOutOfArchive(PART);
    expect(now()).toEqual(PART);
    await saving('saved');
  });

  it('that is removed is there as before, and can be put back', async () => {
    removePart(PART);
    expect(lastRemoved.value).toBe('p');
    await saving('saved');
    expect((await loadChain('p')).records).toHaveLength(1);
    putBackPart(PART);
    expect(lastRemoved.value).toBeUndefined();
    await saving('saved');
    expect((await loadParts()).records).toContainEqual(PART);
  });

  it('is erased for good only once it is removed, with all that belongs to it and nothing else', async () => {
    expect(await eraseForGood(PART)).toBe(false);
    removePart(PART);
    await saving('saved');
    expect(await eraseForGood(PART)).toBe(true);
    expect(parts.value.has('p')).toBe(false);
    expect((await loadParts()).records.map(keyOf)).toEqual(['part/p1']);
    expect((await loadChain('p')).records).toEqual([]);
    expect((await loadVersions('p')).records).toEqual([]);
    expect((await loadSummaries()).records).toEqual([]);
    expect((await loadChain('p1')).records).toHaveLength(1);
    expect((await loadVersions('p1')).records).toHaveLength(1);
  });

  it('serves as a template: the same drawing and setups, and nothing read', async () => {
    await openChain('p');
    const copy = duplicate(PART, chain.value?.links ?? []);
    expect(copy.entry).toMatchObject({ name: `${BLOCK.name}, copy`, size: BLOCK.size });
    expect(copy.entry.requirements.map(({ face }) => face)).toEqual(['right', 'left']);
    expect(copy.entry.requirements.map(({ id }) => id)).not.toContain('right square');
    expect(copy.entry.flatness).toMatchObject([{ face: 'bottom', tolerance: BLOCK.size.x }]);
    expect(copy.entry.flatness?.map(({ id }) => id)).not.toContain('bottom flat');
    await saving('saved');
    const [read] = (await loadChain(copy.id)).records;
    if (read?.kind !== 'inspection') throw new Error('There is no inspection');
    expect(read.setups.map(({ kind }) => kind)).toEqual(['nose comparator', 'assumed parallel']);
    expect(JSON.stringify(read)).not.toContain('"34"');
    expect((await loadChain('p')).records).toHaveLength(1);
  });
});
