import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { METHOD } from '../../src/core/inspection/method';
import { chain, openChain } from '../../src/state/chain';
import { closeInspection } from '../../src/state/inspections';
import { shop } from '../../src/state/shop';
import { beginWork, changeWork, putWork } from '../../src/state/work-log';
import { FORMAT, type InspectionRecord } from '../../src/store/records';
import { loadChain, save } from '../../src/store/shop-store';
import { saving, startAfresh } from './support/fresh';
import { failOnceAt } from './support/full-disk';
import { BLOCK, compared } from './support/inspections';

const ADVICE = { face: 'bottom', mean: 0.6, slopes: { x: -0.02 } } as const;
const INSPECTION = compared('i', '34', '31');

beforeEach(async () => {
  await startAfresh();
  await save([INSPECTION]);
  await openChain('p');
});
afterEach(() => {
  vi.restoreAllMocks();
});

async function stored() {
  const { records } = await loadChain('p');
  return records;
}

describe('beginning to log work', () => {
  it('follows the inspection and closes it, both kept together', async () => {
    const work = beginWork(INSPECTION, BLOCK, ADVICE);
    expect(work).toMatchObject({
      ...{ face: 'bottom', advised: { mean: 0.6, slopes: { x: -0.02 } } },
      ...{ kind: 'work', part: 'p', after: 'i', format: FORMAT },
    });
    await saving('saved');
    const closed = {
      at: expect.any(String),
      part: BLOCK,
      kit: shop.value.kit,
      level: '95',
      method: METHOD,
    };
    expect(await stored()).toEqual([{ ...INSPECTION, closed }, work]);
    expect(chain.value?.links).toEqual(await stored());
  });

  it('keeps neither where one of the two cannot be written', async () => {
    vi.spyOn(console, 'error').mockImplementation(() => undefined);
    // The inspection is put before the work.
    vi.spyOn(crypto, 'randomUUID').mockReturnValue('0-0-0-0-0');
    failOnceAt('0-0-0-0-0');
    const work = beginWork(INSPECTION, BLOCK, ADVICE);
    await saving('not saved');
    expect(await stored()).toEqual([INSPECTION]);
    putWork(work); // so that the next test begins with all saved
    await saving('saved');
  });

  it('leaves an inspection that is closed already as it was closed', async () => {
    closeInspection(INSPECTION, BLOCK);
    const closed = chain.value?.links.find((link) => link.id === 'i') as InspectionRecord;
    beginWork(closed, { ...BLOCK, name: 'Changed since' }, ADVICE);
    await saving('saved');
    const kept = (await stored()).find(({ id }) => id === 'i') as InspectionRecord;
    expect(kept.closed?.part).toEqual(BLOCK);
    expect(kept).toEqual(closed);
  });

  it('begins as a lap, timed in seconds, with no amount yet', async () => {
    const work = beginWork(INSPECTION, BLOCK, ADVICE);
    const amount = { text: '', unit: 'seconds' };
    expect(work).toMatchObject({ method: 'lap', abrasive: '', amount, note: '' });
    await saving('saved');
  });

  it('takes over the way of working of the last time, but neither amount nor note', async () => {
    const first = beginWork(INSPECTION, BLOCK, ADVICE);
    putWork({
      ...first,
      method: 'scrape',
      abrasive: 'P400',
      amount: { text: '50', unit: 'strokes' },
      note: 'slow',
    });
    const amount = { text: '', unit: 'strokes' };
    expect(beginWork(INSPECTION, BLOCK, ADVICE)).toMatchObject({
      ...{ method: 'scrape', abrasive: 'P400', amount, note: '' },
    });
    await saving('saved');
  });

  it('is changed from what it is by now, whatever the screen still shows', async () => {
    const shown = beginWork(INSPECTION, BLOCK, ADVICE);
    changeWork(shown, (now) => ({ ...now, amount: { ...now.amount, text: '12' } }));
    changeWork(shown, (now) => ({ ...now, amount: { ...now.amount, unit: 'strokes' } }));
    changeWork(shown, (now) => ({ ...now, note: 'slow' }));
    await saving('saved');
    const kept = (await stored()).find(({ id }) => id === shown.id);
    expect(kept).toMatchObject({ amount: { text: '12', unit: 'strokes' }, note: 'slow' });
  });
});
