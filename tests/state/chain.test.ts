import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { METHOD } from '../../src/core/inspection/method';
import { withReading } from '../../src/entry/placings';
import { chain, drawnChain, latestInspection, openChain } from '../../src/state/chain';
import {
  beginInspection,
  closeInspection,
  closePart,
  reopenInspection,
  reopenPart,
} from '../../src/state/inspections';
import { setKit } from '../../src/state/kits';
import { addSetups, changeSetup, changeSetups, leaveOut } from '../../src/state/plate-changes';
import { savingState } from '../../src/state/saving';
import { parts, shop } from '../../src/state/shop';
import { putWork } from '../../src/state/work-log';
import type { InspectionRecord } from '../../src/store/records';
import { loadChain, loadParts, save } from '../../src/store/shop-store';
import { noseSetup } from '../entry/support/setups';
import { micro } from '../entry/support/typed';
import { inspection, part, work } from '../store/support/samples';
import { saving, startAfresh } from './support/fresh';
import { BLOCK, compared } from './support/inspections';

beforeEach(startAfresh);
afterEach(() => {
  vi.useRealTimers();
});

/** The open chain has what the database has. */
async function expectStored(): Promise<void> {
  await saving('saved');
  const { records } = await loadChain('p');
  const byId = (a: { id: string }, b: { id: string }) => a.id.localeCompare(b.id);
  expect([...records].sort(byId)).toEqual([...(chain.value?.links ?? [])].sort(byId));
}

async function open(...links: Parameters<typeof save>[0]): Promise<void> {
  await save(links);
  await openChain('p');
}

const latest = () => latestInspection(chain.value?.links ?? []) as InspectionRecord;

describe('the chain of a part', () => {
  const at = (hour: number) => ({ made: `2024-03-05T${String(hour).padStart(2, '0')}:00:00.000Z` });

  it('is read from the database, oldest first, whatever the ids and kinds', async () => {
    await open(
      { ...inspection('a', 'p'), ...at(12) },
      { ...inspection('z', 'p'), ...at(8) },
      { ...work('m', 'p'), ...at(10) },
      inspection('b', 'other'),
    );
    expect(chain.value?.part).toBe('p');
    expect(chain.value?.links.map(({ id }) => id)).toEqual(['z', 'm', 'a']);
    expect(latest().id).toBe('a');
  });

  it('gives way to that of another part', async () => {
    await open(inspection('i', 'p'), inspection('j', 'q'));
    const opening = openChain('q');
    expect(chain.value).toBeUndefined();
    await opening;
    expect(chain.value?.links).toEqual([inspection('j', 'q')]);
  });

  it('has no latest inspection while there is none', () => {
    expect(latestInspection([])).toBeUndefined();
    expect(latestInspection([work('w', 'p')])).toBeUndefined();
  });
});

describe('a change', () => {
  it('is on its way to the database before anything shows it', async () => {
    await open(compared('i', '', ''));
    const seen: string[] = [];
    const stop = chain.subscribe(() => {
      seen.push(savingState.value);
    });
    changeSetups(latest(), () => [noseSetup()]);
    expect(seen).toEqual(['saved', 'saving']); // as it was, and with the change
    stop();
    await expectStored();
    expect(latest().setups).toEqual([noseSetup()]);
  });

  it('that follows fast on others ends as the last, here and in the database', async () => {
    await open(compared('i', '', ''));
    for (const right of ['3', '34', '34.', '34.5'])
      changeSetups(latest(), () => [noseSetup({ right })]);
    await expectStored();
    expect(latest().setups).toEqual([noseSetup({ right: '34.5' })]);
  });

  it('from a screen that shows the readings of a moment ago takes nothing back', async () => {
    await open({ ...compared('i', '', ''), setups: [noseSetup({ right: '', left: '' })] });
    const shown = latest();
    changeSetup(shown, noseSetup(), (setup) => withReading(setup, setup.placings[0]!.id, '34'));
    changeSetup(shown, noseSetup(), (setup) => withReading(setup, setup.placings[1]!.id, '31'));
    leaveOut(shown, 'on right', 'A chip');
    expect(latest().setups).toEqual([noseSetup({ right: '34', left: '31' })]);
    expect(latest().leftOut).toHaveProperty('on right');
    await expectStored();
  });

  it('keeps the other links and their order', async () => {
    await open(inspection('a', 'p'), inspection('b', 'p'), work('c', 'p'));
    putWork({ ...work('c', 'p'), note: 'paper worn' });
    changeSetups(inspection('a', 'p'), () => [noseSetup()]);
    expect(chain.value?.links).toEqual([
      { ...inspection('a', 'p'), setups: [noseSetup()] },
      inspection('b', 'p'),
      { ...work('c', 'p'), note: 'paper worn' },
    ]);
    await expectStored();
  });
});

it('a setup is added after the others, in the units of the shop', async () => {
  await open(compared('i', '34', '31'));
  shop.value = { ...shop.value, units: { size: 'in', deviation: 'tenths' } };
  addSetups(latest(), ['nose comparator'], { faces: ['back', 'front'], base: 'bottom' });
  const { setups } = latest();
  expect(setups.slice(0, -1)).toEqual(compared('i', '34', '31').setups);
  expect(setups.at(-1)).toMatchObject({
    faces: ['back', 'front'],
    base: 'bottom',
    noseHeight: { unit: 'in' },
    placings: [{ reading: { unit: 'tenths' } }, { reading: { unit: 'tenths' } }],
  });
  await expectStored();
});

it('an inspection is closed with the part and kit of then, and can be opened again', async () => {
  vi.useFakeTimers({ now: new Date('2024-03-06T09:00:00Z'), toFake: ['Date'] });
  await open(compared('i', '34', '31'));
  const { kit } = shop.value;
  closeInspection(latest(), BLOCK);
  setKit({ ...kit, plate: micro('9') });
  const closed = { at: '2024-03-06T09:00:00.000Z', part: BLOCK, kit, level: '95', method: METHOD };
  const changed = closed.at;
  expect(latest()).toEqual({ ...compared('i', '34', '31'), changed, closed });
  await expectStored();
  reopenInspection(latest(), 'A slip');
  expect(latest()).toEqual({ ...compared('i', '34', '31'), changed });
  expect('closed' in latest()).toBe(false);
  await expectStored();
});

it('a part is closed with the readings that it is let go with, in one transaction, and taken up again', async () => {
  await open(compared('i', '34', '31'));
  const record = { ...part('p'), entry: BLOCK };
  closePart(record, latest());
  await expectStored();
  const closed = parts.value.get('p');
  expect(closed?.closed).toEqual({ at: expect.any(String), inspection: 'i' });
  expect(latest().closed?.part).toEqual(BLOCK);
  expect((await loadParts()).records).toEqual([closed]);
  reopenPart(closed!);
  expect(parts.value.get('p')).toEqual(record);
  expect(latest().closed).toBeDefined();
});

describe('the chain as it is drawn', () => {
  it('follows what is typed a turn later, and a link more at once', async () => {
    await open(compared('i', '34', '31'));
    const before = chain.value;
    changeSetups(latest(), () => []);
    expect(drawnChain.value).toBe(before);
    await vi.waitFor(() => expect(drawnChain.value).toBe(chain.value));
    beginInspection('p', BLOCK);
    expect(drawnChain.value).toBe(chain.value);
  });

  it('leaves out the states that were gone before their turn', async () => {
    await open(compared('i', '34', '31'));
    const drawn: unknown[] = [];
    const stop = drawnChain.subscribe((now) => drawn.push(now));
    changeSetups(latest(), (setups) => setups.slice(1));
    changeSetups(latest(), () => []);
    await vi.waitFor(() => expect(drawnChain.value).toBe(chain.value));
    stop();
    expect(drawn).toHaveLength(2);
  });
});
