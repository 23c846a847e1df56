import { readFileSync } from 'node:fs';
import { beforeEach, describe, expect, it } from 'vitest';
import { workOut } from '../../src/state/answers';
import { chain, openChain } from '../../src/state/chain';
import { kitName } from '../../src/state/kits';
import { openShop } from '../../src/state/open-shop';
import { loading, parts, shop, unread } from '../../src/state/shop';
import { level } from '../../src/state/shop-settings';
import { FORMAT } from '../../src/store/records';
import { startAfresh } from '../state/support/fresh';
import { putAnything, storedAt } from './support/database';

/** Everything in the database of an invented shop, by its key, as the code of that format wrote it. */
function sample(format: number): Readonly<Record<string, Record<string, unknown>>> {
  const file = new URL(`samples/format-${format}.json`, import.meta.url);
  return JSON.parse(readFileSync(file, 'utf8'));
}

const FORMATS = Array.from({ length: FORMAT }, (_, index) => index + 1);

/** The ways of reading that format 1 had. */
const KINDS = [
  'assumed parallel',
  'column',
  'face map',
  'micrometer',
  'nose comparator',
  'over the top',
];

beforeEach(startAfresh);

describe.each(FORMATS)('a shop of format %i', (format) => {
  beforeEach(async () => {
    for (const [key, value] of Object.entries(sample(format))) await putAnything(key, value);
    await openShop();
  });

  const trialBlock = () =>
    [...parts.value.values()].find(({ entry }) => entry.name === 'Trial block');

  it('is of that format all through', () => {
    for (const record of Object.values(sample(format))) expect(record.format).toBe(format);
  });

  it('opens in full, with its kits and settings', () => {
    expect(loading.value).toBe('ready');
    expect(unread.value).toEqual([]);
    expect([...parts.value.values()].map(({ entry }) => entry.name)).toEqual([
      'Example block (invented)',
      'Trial block',
      'Block in inches',
    ]);
    expect(kitName.value).toBe('Kit 2');
    expect(shop.value.otherKits).toMatchObject([{ name: 'Bench kit', kit: { warmth: '2' } }]);
    expect(level.value).toBe(0.9);
    expect(shop.value.units).toEqual({ size: 'in', deviation: 'thou' });
  });

  it('has every reading and every piece of work, and its readings give an answer', async () => {
    const part = trialBlock();
    if (part === undefined) throw new Error('The part has gone');
    await openChain(part.id);
    expect(unread.value).toEqual([]);
    const links = chain.value?.links ?? [];
    const inspections = links.filter((link) => link.kind === 'inspection');
    const works = links.filter((link) => link.kind === 'work');
    expect([inspections.length, works.length]).toEqual([2, 1]);
    const [work] = works;
    const first = inspections.find(({ id }) => id === work?.after);
    const second = inspections.find(({ id }) => id !== work?.after);
    if (first === undefined || second === undefined) throw new Error('Readings have gone');
    expect(first.setups.map(({ kind }) => kind).toSorted()).toEqual(KINDS);
    expect(Object.values(first.leftOut ?? {})).toMatchObject([{ why: 'It was bumped' }]);
    expect(work).toMatchObject({
      abrasive: 'P400 paper',
      amount: { text: '20' },
      note: 'Kerosene',
    });
    expect(part.closed).toMatchObject({ inspection: second.id });
    for (const inspection of [first, second]) {
      const findings = workOut(inspection, part.entry).answer?.findings ?? [];
      expect(findings.length).toBeGreaterThan(0);
      for (const finding of findings) expect(finding.fixed).toBe(true);
    }
  });

  it('has the faces that are to be flat, once the format had them', () => {
    const asked = trialBlock()?.entry.flatness?.map(({ face, tolerance }) => [face, tolerance]);
    expect(asked).toEqual(format === 1 ? undefined : [['right', { text: '3', unit: 'µm' }]]);
  });

  it('lies there untouched until something in it is changed', async () => {
    await openChain(trialBlock()?.id ?? '');
    for (const [key, value] of Object.entries(sample(format))) {
      expect(await storedAt(key)).toEqual(value);
    }
  });
});
