import { beforeEach, describe, expect, it, vi } from 'vitest';
import { chain, openChain } from '../../src/state/chain';
import { found, gatherFound } from '../../src/state/found';
import { countAgain, learnedRate, leaveOut, passes } from '../../src/state/learning';
import { putBackPart, removePart } from '../../src/state/shelves';
import { parts, shop } from '../../src/state/shop';
import { summaries } from '../../src/state/summaries';
import type { PartRecord } from '../../src/store/records';
import { save } from '../../src/store/shop-store';
import { part } from '../store/support/samples';
import { saving, startAfresh } from './support/fresh';
import { BLOCK, compared, workOn } from './support/inspections';

beforeEach(async () => {
  await startAfresh();
  found.value = new Map();
  summaries.value = new Map();
});

const ALUMINIUM = { ...BLOCK, material: 'Aluminium' };
const WAY = {
  material: 'aluminium',
  abrasive: 'p400 paper',
  method: 'lap',
  unit: 'seconds',
} as const;

/** A part with one pass of 20 s on its bottom: from 34 and 31 to 33 and 32, which is 60 · 2/148 µm. */
async function worked(id: string, seconds = '20', example = false): Promise<PartRecord> {
  const record = { ...part(id), entry: ALUMINIUM, example };
  const hour = id === 'a' ? 14 : 15;
  const made = (minute: number) => `2024-03-05T${hour}:0${minute}:00.000Z`;
  const links = [
    { ...compared(`before ${id}`, '34', '31'), part: id, made: made(1) },
    {
      ...workOn('bottom', seconds),
      ...{
        id: `work ${id}`,
        part: id,
        after: `before ${id}`,
        abrasive: 'P400 paper',
        made: made(2),
      },
    },
    { ...compared(`after ${id}`, '33', '32'), part: id, made: made(3) },
  ];
  await save([record, ...links]);
  parts.value = new Map(parts.value).set(id, record);
  return record;
}

describe('what the shop has learned', () => {
  it('comes from the passes of every part, the open one and the others', async () => {
    await worked('a');
    await worked('b', '10');
    await openChain('a');
    await gatherFound(() => true);
    expect(passes.value.map(({ work, amount }) => [work.id, amount])).toEqual([
      ['work a', 20],
      ['work b', 10],
    ]);
    expect(passes.value[0]?.wedge).toBeCloseTo((60 * 2) / 148, 9);
    expect(learnedRate(WAY)).toMatchObject({ passes: 2 });
  });

  it('is nothing of an invented part, nor of work without an amount', async () => {
    await worked('a', '20', true);
    await worked('b', '');
    await gatherFound(() => true);
    expect(passes.value).toEqual([]);
    expect(learnedRate(WAY)).toMatchObject({ passes: 0 });
  });

  it('leaves out what is left out, what was before a new beginning, and the pass in question', async () => {
    await worked('a');
    await openChain('a');
    expect(learnedRate(WAY).passes).toBe(1);
    expect(learnedRate(WAY, 'work a').passes).toBe(0);
    void leaveOut(passes.value[0]!);
    await vi.waitFor(() => expect(learnedRate(WAY).passes).toBe(0));
    void countAgain(passes.value[0]!);
    await vi.waitFor(() => expect(learnedRate(WAY).passes).toBe(1));
    const name = 'aluminium · p400 paper · lap · seconds';
    shop.value = { ...shop.value, learnedSince: { [name]: '2024-03-05T14:02:00.000Z' } };
    expect(learnedRate(WAY).passes).toBe(0);
    shop.value = { ...shop.value, learnedSince: { [name]: '2024-03-05T14:01:59.000Z' } };
    expect(learnedRate(WAY).passes).toBe(1);
  });

  it('leaves out a pass of a part that is not open, and keeps that', async () => {
    await worked('a');
    await gatherFound(() => true);
    await leaveOut(passes.value[0]!);
    expect(learnedRate(WAY).passes).toBe(0);
    await saving('saved');
    await openChain('a');
    expect(passes.value.map(({ counts }) => counts)).toEqual([false]);
    expect(chain.value?.links.map(({ kind }) => kind)).toEqual([
      'inspection',
      'work',
      'inspection',
    ]);
  });

  it('is nothing of a removed part until it is put back, open or not', async () => {
    const [mistaken] = [await worked('a'), await worked('b')];
    await gatherFound(() => true);
    expect(learnedRate(WAY).passes).toBe(2);
    removePart(mistaken);
    expect(learnedRate(WAY).passes).toBe(1);
    expect(passes.value.map(({ work }) => work.id)).toEqual(['work b']);
    await openChain('a');
    expect(learnedRate(WAY).passes).toBe(1);
    putBackPart(mistaken);
    expect(learnedRate(WAY).passes).toBe(2);
    expect(passes.value.map(({ work }) => work.id)).toEqual(['work a', 'work b']);
  });

  it('is learned for each way by itself', async () => {
    await worked('a');
    await openChain('a');
    expect(learnedRate({ ...WAY, abrasive: 'P600 paper' }).passes).toBe(0);
    expect(learnedRate({ ...WAY, material: 'Brass' }).passes).toBe(0);
  });

  it('narrows and moves towards what the passes show', async () => {
    const before = learnedRate(WAY).typical;
    await worked('a');
    await openChain('a');
    const after = learnedRate(WAY).typical;
    // 0.81 µm in 20 s is slow beside common practice.
    expect(after.median).toBeLessThan(before.median);
    expect(after.high / after.low).toBeLessThan(before.high / before.low);
  });
});
