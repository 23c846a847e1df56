import fc from 'fast-check';
import { afterAll, beforeAll, beforeEach, describe, expect, it, vi } from 'vitest';
import type { NoseComparatorSetup, SetupEntry } from '../../src/entry/setup-entry';
import { mergeStored } from '../../src/exchange/merge/merge-stored';
import type { InspectionRecord } from '../../src/store/records';
import { loadChain, loadVersions, save } from '../../src/store/shop-store';
import { isSame } from '../../src/store/three-way';
import { noseSetup } from '../entry/support/setups';
import { emptyDatabase } from '../store/support/database';
import { inspection, part } from '../store/support/samples';

beforeAll(() => vi.stubGlobal('document', new EventTarget()));
afterAll(() => vi.unstubAllGlobals());
beforeEach(emptyDatabase);

/** A window of the app: it shares nothing with another but the database and the browser's messages. */
async function openWindow() {
  vi.resetModules();
  const [chain, changes, saving, shop, opening, follow, shelves, erasing, inspections, windows] =
    await Promise.all([
      import('../../src/state/chain'),
      import('../../src/state/plate-changes'),
      import('../../src/state/saving'),
      import('../../src/state/shop'),
      import('../../src/state/open-shop'),
      import('../../src/state/follow'),
      import('../../src/state/shelves'),
      import('../../src/state/erase-for-good'),
      import('../../src/state/inspections'),
      import('../../src/store/other-windows'),
    ]);
  follow.followOtherWindows();
  const actions = { ...shelves, ...erasing, ...inspections, ...windows };
  return { ...chain, ...changes, ...saving, ...shop, ...opening, ...actions };
}

type Window = Awaited<ReturnType<typeof openWindow>>;

const FROM: InspectionRecord = {
  ...inspection('i', 'p'),
  setups: [setupOf('first')],
};

function setupOf(id: string): NoseComparatorSetup {
  return { ...noseSetup({ nose: '', indicator: '', right: '', left: '' }), id };
}

async function withReadings(): Promise<readonly [Window, Window]> {
  const windows = [await openWindow(), await openWindow()] as const;
  await startOver(windows);
  return windows;
}

/** The two windows on new readings of a new part. */
async function startOver(windows: readonly Window[], ofPart = 'p'): Promise<void> {
  await save([part(ofPart), { ...FROM, part: ofPart }]);
  for (const window of windows) await window.openChain(ofPart);
}

function shown(window: Window): InspectionRecord {
  return window.chain.value?.links.find(({ id }) => id === 'i') as InspectionRecord;
}

const stored = async (ofPart = 'p') =>
  (await loadChain(ofPart)).records.find(({ id }) => id === 'i') as InspectionRecord;

/** Until both windows show what lies on the disk, with nothing under way. */
async function settled(windows: readonly Window[], ofPart = 'p'): Promise<InspectionRecord> {
  return vi.waitFor(
    async () => {
      const now = await stored(ofPart);
      for (const window of windows) {
        expect(window.savingState.value).toBe('saved');
        expect(isSame(shown(window), now)).toBe(true);
      }
      return now;
    },
    { timeout: 20_000, interval: 5 },
  );
}

const FIELDS = ['nose', 'indicator', 'right', 'left'] as const;
type Field = (typeof FIELDS)[number];

function textIn(setup: NoseComparatorSetup, field: Field): string {
  if (field === 'nose') return setup.noseHeight.text;
  if (field === 'indicator') return setup.indicatorHeight.text;
  return setup.placings.find(({ face }) => face === field)?.reading.text ?? '';
}

function typed(setup: NoseComparatorSetup, field: Field, text: string): NoseComparatorSetup {
  if (field === 'nose') return { ...setup, noseHeight: { ...setup.noseHeight, text } };
  if (field === 'indicator')
    return { ...setup, indicatorHeight: { ...setup.indicatorHeight, text } };
  const placings = setup.placings.map((placing) =>
    placing.face === field ? { ...placing, reading: { ...placing.reading, text } } : placing,
  );
  return { ...setup, placings };
}

function type(window: Window, setup: number, field: Field, text: string): void {
  window.changeSetups(shown(window), (setups) =>
    setups.map((one, index) => (index === setup ? typed(nose(one), field, text) : one)),
  );
}

/** All setups here are of this kind. */
function nose(setup: SetupEntry): NoseComparatorSetup {
  return setup as NoseComparatorSetup;
}

describe('two windows on the same readings', () => {
  it('each see what the other types', async () => {
    const windows = await withReadings();
    type(windows[0], 0, 'right', '34');
    await settled(windows);
    type(windows[1], 0, 'left', '31');
    const now = await settled(windows);
    expect(now.setups).toEqual([{ ...setupOf('first'), placings: noseSetup().placings }]);
    expect((await loadVersions('p')).records).toEqual([]);
  });

  it('keep what was typed into different fields at once', async () => {
    const windows = await withReadings();
    type(windows[0], 0, 'right', '34');
    type(windows[1], 0, 'left', '31');
    const now = await settled(windows);
    expect(now.setups).toEqual([{ ...setupOf('first'), placings: noseSetup().placings }]);
  });

  it('say so where both typed into the same field at once, and keep both', async () => {
    const windows = await withReadings();
    type(windows[0], 0, 'right', '34');
    type(windows[1], 0, 'right', '43');
    const now = await settled(windows);
    const { records } = await loadVersions('p');
    expect(
      [now, ...records.map(({ record }) => record as InspectionRecord)].map(rightOf).sort(),
    ).toEqual(['34', '43']);
    expect(windows.some(({ gaveWay }) => gaveWay.value)).toBe(true);
  });

  it('see a part that the other begins, and its name', async () => {
    const [one, other] = await withReadings();
    one.putPart(part('new', 'Sine bar'));
    await vi.waitFor(() => expect(other.parts.value.get('new')?.entry.name).toBe('Sine bar'));
  });

  it('undo what was typed here, and leave what the other has typed since', async () => {
    const windows = await withReadings();
    type(windows[0], 0, 'right', '34');
    await settled(windows);
    type(windows[1], 0, 'left', '31');
    // Not yet heard of: the write finds it on the disk.
    windows[0].undo(shown(windows[0]));
    expect(fieldsOf(await settled(windows))).toEqual({ ...EMPTY, left: '31' });
    // Once it is heard of, nothing of before can be taken back any more.
    windows[0].undo(shown(windows[0]));
    expect(fieldsOf(await settled(windows))).toEqual({ ...EMPTY, left: '31' });
  });

  it('keep what is typed while the other finishes the readings, and say so', async () => {
    const windows = await withReadings();
    type(windows[0], 0, 'right', '34');
    await settled(windows);
    windows[0].closeInspection(shown(windows[0]), part('p').entry);
    type(windows[1], 0, 'left', '31');
    const now = await settled(windows);
    const { records } = await loadVersions('p');
    // Finished is what was seen when it was finished; what came beside it is an earlier version.
    expect(now.closed).toBeDefined();
    expect(fieldsOf(now)).toEqual({ ...EMPTY, right: '34' });
    expect(records.map(({ record }) => fieldsOf(record as InspectionRecord).left)).toContain('31');
    expect(windows.some(({ gaveWay }) => gaveWay.value)).toBe(true);
    type(windows[1], 0, 'left', '32');
    expect(fieldsOf(await settled(windows))).toEqual(fieldsOf(now));
  });

  it('lose nothing, whatever they do in whatever order', async () => {
    const windows = [await openWindow(), await openWindow()] as const;
    let part = 0;
    let text = 0;
    const step = fc.record({
      window: fc.constantFrom<0 | 1>(0, 1),
      setup: fc.nat(2),
      does: fc.oneof(
        { weight: 6, arbitrary: fc.constantFrom(...FIELDS) },
        { weight: 1, arbitrary: fc.constantFrom('adds' as const, 'takes away' as const) },
      ),
      /** ms until the next step; none where both come in the same turn. */
      rest: fc.option(fc.nat(12)),
    });
    await fc.assert(
      fc.asyncProperty(fc.array(step, { minLength: 2, maxLength: 14 }), async (steps) => {
        part += 1;
        const ofPart = `p${part}`;
        await startOver(windows, ofPart);
        const all = new Set<string>();
        /** Texts that were replaced or taken away by somebody who saw them. */
        const done = new Set<string>();
        for (const { window: at, setup, does, rest } of steps) {
          const window = windows[at];
          const now = shown(window).setups[setup];
          if (does === 'adds') {
            text += 1;
            const added = setupOf(`added ${text}`);
            window.changeSetups(shown(window), (setups) => [...setups, added]);
          } else if (now !== undefined && does === 'takes away') {
            for (const field of FIELDS) done.add(textIn(nose(now), field));
            window.changeSetups(shown(window), (setups) => setups.filter((one) => one !== now));
          } else if (now !== undefined && does !== 'takes away') {
            text += 1;
            done.add(textIn(nose(now), does));
            all.add(String(text));
            type(window, setup, does, String(text));
          }
          if (rest !== null) await new Promise((resolve) => setTimeout(resolve, rest));
        }
        const record = await settled(windows, ofPart);
        const { records: versions } = await loadVersions(ofPart);
        const kept = JSON.stringify([record, versions]);
        for (const one of all) {
          if (!done.has(one)) expect(kept).toContain(`"text":"${one}"`);
        }
      }),
      { numRuns: 60 },
    );
  });
});

/** Both windows know the part: the shop is open in them. */
async function withShop(): Promise<readonly [Window, Window]> {
  const windows = await withReadings();
  for (const window of windows) await window.openShop();
  return windows;
}

const partIn = (window: Window) => window.parts.value.get('p');

describe('two windows on different screens of a part', () => {
  it('keep a change of the drawing beside a removal of the part, and both see both', async () => {
    const [one, other] = await withShop();
    const before = partIn(other)!;
    one.removePart(partIn(one)!);
    // The other still draws what was.
    other.putPart({ ...before, entry: { ...before.entry, job: '1234' } });
    await vi.waitFor(() => {
      for (const window of [one, other]) {
        expect(partIn(window)).toMatchObject({ entry: { job: '1234' }, removed: {} });
      }
    });
  });

  it.each(['archive', 'removePart'] as const)(
    'read on while the other does this with the part: %s',
    async (does) => {
      const windows = await withShop();
      windows[0][does](partIn(windows[0])!);
      type(windows[1], 0, 'right', '34');
      expect(fieldsOf(await settled(windows)).right).toBe('34');
      await vi.waitFor(() => {
        expect(partIn(windows[1])?.[does === 'archive' ? 'archived' : 'removed']).toBeDefined();
      });
    },
  );

  it('see that the other has erased the part for good, and all that was read of it', async () => {
    const [one, other] = await withShop();
    one.removePart(partIn(one)!);
    await vi.waitFor(() => expect(one.savingState.value).toBe('saved'));
    expect(await one.eraseForGood(partIn(one)!)).toBe(true);
    await vi.waitFor(() => {
      expect(partIn(other)).toBeUndefined();
      expect(other.chain.value?.links).toEqual([]);
    });
  });

  it('take nothing off the screen where the browser has cleared the database', async () => {
    const windows = await withShop();
    type(windows[0], 0, 'right', '34');
    await settled(windows);
    await emptyDatabase();
    vi.stubGlobal('document', Object.assign(document, { visibilityState: 'visible' }));
    document.dispatchEvent(new Event('visibilitychange'));
    await new Promise((resolve) => setTimeout(resolve, 50));
    for (const window of windows) {
      expect(partIn(window)).toBeDefined();
      expect(fieldsOf(shown(window)).right).toBe('34');
    }
  });

  it('see what the other merges, what was read before the open readings before them', async () => {
    const windows = await withShop();
    const [one, other] = windows;
    type(other, 0, 'left', '31');
    const now = await settled(windows);
    const LATER = '2099-03-05T15:00:00.000Z';
    const changed = typed(nose(now.setups[0]!), 'right', '34');
    await mergeStored([
      { ...now, setups: [changed], changed: LATER },
      { ...inspection('earlier', 'p'), made: '2001-01-01T00:00:00.000Z' },
      { ...part('p', 'Renamed'), changed: LATER },
      part('another', 'Sine bar'),
    ]);
    one.tellOtherWindows('everything');
    await vi.waitFor(() => {
      expect(fieldsOf(shown(other))).toEqual({ ...EMPTY, right: '34', left: '31' });
      expect(other.chain.value?.links.map(({ id }) => id)).toEqual(['earlier', 'i']);
      expect(partIn(other)?.entry.name).toBe('Renamed');
      expect(other.parts.value.get('another')?.entry.name).toBe('Sine bar');
    });
  });

  it('put what is typed during a merge together with what the merge has brought', async () => {
    const windows = await withShop();
    const now = await stored();
    const changed = typed(nose(now.setups[0]!), 'right', '34');
    await mergeStored([{ ...now, setups: [changed], changed: '2099-03-05T15:00:00.000Z' }]);
    // No word of the merge yet.
    type(windows[1], 0, 'left', '31');
    await vi.waitFor(async () => {
      expect(fieldsOf(await stored())).toEqual({ ...EMPTY, right: '34', left: '31' });
    });
  });
});

const EMPTY = { nose: '', indicator: '', right: '', left: '' };

function fieldsOf({ setups: [setup] }: InspectionRecord): Record<Field, string> {
  const texts = FIELDS.map((field) => [field, textIn(nose(setup!), field)]);
  return Object.fromEntries(texts) as Record<Field, string>;
}

function rightOf({ setups: [setup] }: InspectionRecord): string {
  return textIn(setup as NoseComparatorSetup, 'right');
}
