import { beforeEach, describe, expect, it, vi } from 'vitest';
import { METHOD } from '../../src/core/inspection/method';
import { simulateZone } from '../../src/core/verdict/monte-carlo';
import { arrive } from '../../src/state/agreed';
import { workOutFlat } from '../../src/state/answers';
import { chain, latestInspection, openChain } from '../../src/state/chain';
import { openShop } from '../../src/state/open-shop';
import { changeSetups } from '../../src/state/plate-changes';
import { settleAll, settleOpenPart, standingOf } from '../../src/state/settling';
import { parts, putPart, shop } from '../../src/state/shop';
import { summaries } from '../../src/state/summaries';
import { zoneQuestion } from '../../src/state/zone-form/questions';
import type { InspectionRecord } from '../../src/store/records';
import { loadSummaries, save } from '../../src/store/shop-store';
import { noseSetup } from '../entry/support/setups';
import { part, summary } from '../store/support/samples';
import { saving, startAfresh } from './support/fresh';
import { failOnceAt } from './support/full-disk';
import { BLOCK, compared, swept } from './support/inspections';

const PART = { ...part('p'), entry: BLOCK };

beforeEach(async () => {
  await startAfresh();
  summaries.value = new Map();
  await save([PART, compared('i', '34', '31')]);
  await openShop();
});

const latest = () => latestInspection(chain.value?.links ?? []) as InspectionRecord;

describe('where a part stands', () => {
  it('is worked out for the list, and written beside the part', async () => {
    await settleAll(['p'], () => true);
    await saving('saved');
    const known = summaries.value.get('p');
    // 1.82 µm of 5, with little doubt.
    expect(known?.standing?.probabilities).toEqual([expect.any(Number), expect.any(Number)]);
    expect(known?.standing?.probabilities[0]).toBeGreaterThan(0.95);
    expect(known?.standing).toMatchObject({ read: compared('i', '', '').made, notFixed: 0 });
    expect((await loadSummaries()).records).toEqual([known]);
  });

  it('is not said before its sums are worked out', async () => {
    await save([compared('i', '33+1', '31')]);
    expect(standingOf(compared('i', '33+1', '31'), BLOCK)).toBeUndefined();
    await settleAll(['p'], () => true);
    await saving('saved');
    expect(summaries.value.get('p')?.standing?.probabilities[0]).toBeGreaterThan(0.95);
  });

  it('is no longer said from the first keystroke on, in the transaction that writes it', async () => {
    await settleAll(['p'], () => true);
    await openChain('p');
    await saving('saved');
    changeSetups(latest(), () => [noseSetup()]);
    expect(summaries.value.get('p')?.standing).toBeUndefined();
    await saving('saved');
    expect((await loadSummaries()).records[0]?.standing).toBeUndefined();
  });

  it('stays said where the keystroke could not be written', async () => {
    await settleAll(['p'], () => true);
    await openChain('p');
    await saving('saved');
    failOnceAt('i');
    changeSetups(latest(), () => [noseSetup()]);
    await saving('not saved');
    expect((await loadSummaries()).records[0]?.standing).toBeDefined();
  });

  it('is worked out anew when the part is left, whatever was said before', async () => {
    const wrong = { probabilities: [0], notFixed: 7 };
    summaries.value = new Map([
      ['p', { ...part('p'), kind: 'summary', part: 'p', standing: wrong }],
    ]);
    await openChain('p');
    settleOpenPart('p')();
    expect(summaries.value.get('p')?.standing).toEqual(standingOf(latest(), BLOCK));
    expect(summaries.value.get('p')?.standing?.notFixed).toBe(0);
    await saving('saved');
  });

  it('is not known any more with another drawing, and stays known with another place', async () => {
    await settleAll(['p'], () => true);
    const known = parts.value.get('p')!;
    putPart({ ...known, archived: { at: known.made } });
    expect(summaries.value.get('p')?.standing).toBeDefined();
    putPart({ ...known, entry: { ...BLOCK, requirements: [] } });
    expect(summaries.value.get('p')?.standing).toBeUndefined();
    await saving('saved');
  });

  it('is worked out for the list where form is to be reckoned with, too', async () => {
    await save([swept('21')]);
    await settleAll(['p'], () => true);
    await saving('saved');
    const { findings } = workOutFlat(swept('21'), BLOCK).answer!;
    const withForm = findings.map((finding) => {
      if (!finding.fixed || finding.formPoints.length === 0) throw new Error('No form was read');
      return simulateZone(zoneQuestion(finding).zone).probability;
    });
    expect(summaries.value.get('p')?.standing?.probabilities).toEqual(withForm);
  });

  it('is as the finished readings said it, where the same method said it', async () => {
    const { kit } = shop.value;
    const found = { value: 1, expanded: 1, probability: 0.25, verdict: 'out' as const };
    const said = BLOCK.requirements.map(({ id }) => ({ requirement: id, found }));
    const closed = { at: PART.made, part: BLOCK, kit, level: '95', method: METHOD, said };
    expect(standingOf({ ...swept('21'), closed }, BLOCK)?.probabilities[0]).toBe(0.25);
    const before = { ...closed, method: METHOD - 1 };
    expect(standingOf({ ...swept('21'), closed: before }, BLOCK)).toBeUndefined();
  });

  it('is not said of a part that was changed while it was worked out', async () => {
    const working = settleAll(['p'], () => true);
    // Its turn has come, and the database has yet to answer.
    await new Promise((resolve) => setTimeout(resolve));
    putPart({ ...PART, entry: { ...BLOCK, requirements: [] } });
    await working;
    expect(summaries.value.get('p')?.standing).toBeUndefined();
    await saving('saved');
    expect((await loadSummaries()).records[0]?.standing).toBeUndefined();
  });
});

describe('where another window changes a part while the list waits for others', () => {
  /** Settles the part, and is let do something before that is written. */
  async function settleBut(meanwhile: () => unknown): Promise<void> {
    let asked = 0;
    await settleAll(['p', 'q'], () => {
      asked += 1;
      // The second part's turn: the first one is worked out, and waits to be written with it.
      if (asked === 2) meanwhile();
      return true;
    });
    await saving('saved');
  }
  const unsettled = { ...summary('p'), changed: '2024-03-05T14:08:00.000Z' };
  const standingThere = async () => {
    const { records } = await loadSummaries();
    return records.find((one) => one.part === 'p')?.standing;
  };

  it('it says where the part stands where nothing happens', async () => {
    await settleBut(() => {});
    expect(await standingThere()).toBeDefined();
  });

  it('its word that this holds no more stays, told of or not', async () => {
    await settleBut(() => save([unsettled]));
    expect(await standingThere()).toBeUndefined();
    expect(summaries.value.get('p')?.standing).toBeUndefined();
    await settleAll(['p'], () => true);
    await saving('saved');
    expect(await standingThere()).toBeDefined();
  });

  it('what was worked out is dropped once it has told of other readings', async () => {
    await settleBut(() => arrive([compared('i', '99', '31')]));
    expect(await standingThere()).toBeUndefined();
  });
});

it('a part that was never read is not read', () => {
  expect(standingOf(undefined, BLOCK)).toEqual({ probabilities: [], notFixed: 2 });
  vi.useRealTimers();
});
