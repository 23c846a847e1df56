import { beforeEach, describe, expect, it, vi } from 'vitest';
import { doJob } from '../../src/exchange/jobs';
import { learnAnew, setAnew, takeBackLearningAnew } from '../../src/state/begun-anew';
import { chain, openChain } from '../../src/state/chain';
import { currentRun } from '../../src/state/comparators';
import { beginInspection, closeInspection, reopenInspection } from '../../src/state/inspections';
import { openShop } from '../../src/state/open-shop';
import { changeSetups, undo } from '../../src/state/plate-changes';
import { parts, putPart, shop } from '../../src/state/shop';
import { versions, versionsOf } from '../../src/state/versions';
import { beginWork } from '../../src/state/work-log';
import { bringBack } from '../../src/store/bring-back';
import type { InspectionRecord, PartRecord } from '../../src/store/records';
import { loadChain, loadParts, save } from '../../src/store/shop-store';
import { noseSetup } from '../entry/support/setups';
import { emptyDatabase } from '../store/support/database';
import { part } from '../store/support/samples';
import { saving, startAfresh } from './support/fresh';
import { BLOCK, compared } from './support/inspections';

const PART: PartRecord = { ...part('p'), entry: BLOCK };
const DAY = 86_400_000;

const setBack = (days = 1) => vi.setSystemTime(Date.now() - days * DAY);
const first = () => chain.value!.links[0] as InspectionRecord;
const rightOf = ({ setups }: InspectionRecord) => {
  return setups[0]?.kind === 'nose comparator' ? setups[0].placings[0]?.reading.text : undefined;
};
const type = (right: string) => changeSetups(first(), () => [noseSetup({ right, left: '31' })]);

/** As in a page that was opened just now. */
async function reopen(): Promise<void> {
  await saving('saved');
  chain.value = undefined;
  versions.value = [];
  parts.value = new Map();
  await openShop();
  await openChain('p');
}

beforeEach(async () => {
  await startAfresh();
  await save([PART, compared('i', '34', '31')]);
  await openShop();
  await openChain('p');
});

describe('where the clock was set back', () => {
  it('what was typed last is what is stored, and told as changed later', async () => {
    type('35');
    const { changed } = first();
    setBack();
    type('36');
    expect(first().changed > changed).toBe(true);
    await reopen();
    expect(rightOf(first())).toBe('36');
    expect(first().changed > changed).toBe(true);
  });

  it('a chain stays in the order that it was worked in', async () => {
    closeInspection(first(), BLOCK);
    setBack();
    beginWork(first(), BLOCK, { face: 'bottom', mean: 1, slopes: { x: -0.01 } });
    setBack();
    const again = beginInspection('p', BLOCK);
    closeInspection(again, BLOCK);
    const shown = (chain.value?.links ?? []).map(({ id }) => id);
    await reopen();
    expect(chain.value?.links.map(({ id }) => id)).toEqual(shown);
    const last = chain.value!.links.at(-1) as InspectionRecord;
    expect(last.id).toBe(again.id);
    expect(last.closed!.at >= last.made).toBe(true);
  });

  it('each change is taken back by itself, the last one first', () => {
    type('35');
    setBack();
    changeSetups(first(), (setups) => [...setups, noseSetup({ left: '1' })]);
    type('36');
    undo(first());
    expect(first().setups).toHaveLength(2);
    undo(first());
    expect(rightOf(first())).toBe('35');
  });

  it('the versions of readings stay in order, and none takes the place of another', async () => {
    const states = ['35', '36', '37'];
    for (const right of states) {
      type(right);
      closeInspection(first(), BLOCK);
      setBack();
      reopenInspection(first(), `It was not ${right}`);
    }
    const order = () => versionsOf(first()).map(({ record }) => rightOf(record));
    expect(order()).toEqual(states);
    await reopen();
    expect(order()).toEqual(states);
  });

  it('a comparator that was set anew begins a new run all the same', async () => {
    const point = {
      ...{ at: '2024-03-05T14:00:00.000Z', part: PART, inspection: 'i' },
      ...{ kind: 'zero' as const, name: 'N', title: 'N', value: 3, expanded: 1 },
    };
    setBack();
    setAnew('N', point.at);
    const run = currentRun({ name: 'N', title: 'N', kind: 'zero', points: [point] });
    expect(run.points).toEqual([]);
    await saving('saved');
  });

  it('what is done after a rate was begun anew counts, on whatever part', async () => {
    learnAnew('lap');
    const { learnedSince } = shop.value;
    setBack();
    await save([{ ...PART, id: 'q' }]);
    await openChain('q');
    const begun = beginInspection('q', BLOCK);
    const work = beginWork(begun, BLOCK, { face: 'bottom', mean: 1, slopes: { x: -0.01 } });
    expect(begun.made > learnedSince!.lap!).toBe(true);
    expect(work.made > begun.made).toBe(true);
    takeBackLearningAnew('lap');
    await saving('saved');
  });

  it('what a page that is no more had not stored comes to the disk in place of what was before', async () => {
    type('35');
    await saving('saved');
    const { changed: from } = first();
    setBack();
    type('36');
    const record = first();
    await saving('saved');
    // As it was when the page went: the older state on the disk, the newer one taken down.
    const [stored] = (await loadChain('p')).records;
    await save([{ ...stored!, ...compared('i', '35', '31'), changed: from }]);
    await bringBack([{ record, from }]);
    const [brought] = (await loadChain('p')).records;
    expect(rightOf(brought as InspectionRecord)).toBe('36');
  });
});

describe('two phones whose clocks differ by a day', () => {
  const head = { made: '2024-03-05T14:07:00.000Z', app: '0.1.0' };
  const backup = async () => {
    await saving('saved');
    const blob = (await doJob({ kind: 'back up', head }, () => {})) as Blob;
    return new File([blob], 'other.highedge');
  };
  const mergeIn = (file: File) => doJob({ kind: 'merge', file, head }, () => {});
  const nameThere = async () => (await loadParts()).records[0]?.entry.name;
  const rename = (name: string) => {
    const own = parts.value.get('p')!;
    putPart({ ...own, entry: { ...own.entry, name } });
  };

  it('come to the same, and what is changed after a merge goes on though the clock is behind', async () => {
    const before = await backup();
    vi.setSystemTime(Date.now() + DAY / 24);
    rename('Of the phone that is ahead');
    const ahead = await backup();
    await emptyDatabase();
    await mergeIn(before);
    setBack();
    await reopen();
    rename('Of the phone that is behind');
    await mergeIn(ahead);
    await reopen();
    // Nobody can tell which was really later: the other state is kept.
    expect(await nameThere()).toBe('Of the phone that is ahead');
    rename('Changed after the merge');
    const behind = await backup();
    await mergeIn(ahead);
    expect(await nameThere()).toBe('Changed after the merge');
    await emptyDatabase();
    await mergeIn(ahead);
    await mergeIn(behind);
    expect(await nameThere()).toBe('Changed after the merge');
    const all = JSON.stringify(await backup().then(textOf));
    for (const name of ['Of the phone that is ahead', 'Of the phone that is behind']) {
      expect(all).toContain(name);
    }
  });

  it('keep the order of the work on one part that both go on with', async () => {
    closeInspection(first(), BLOCK);
    beginWork(first(), BLOCK, { face: 'bottom', mean: 1, slopes: { x: -0.01 } });
    const ahead = await backup();
    await emptyDatabase();
    await mergeIn(ahead);
    setBack();
    await reopen();
    const again = beginInspection('p', BLOCK);
    await reopen();
    expect(chain.value?.links.at(-1)?.id).toBe(again.id);
  });
});

async function textOf(file: File): Promise<string> {
  return new Response(file.stream().pipeThrough(new DecompressionStream('gzip'))).text();
}
