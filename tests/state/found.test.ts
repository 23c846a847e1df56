import { IDBObjectStore } from 'fake-indexeddb';
import fc from 'fast-check';
import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { METHOD } from '../../src/core/inspection/method';
import { chain, type Link, openChain } from '../../src/state/chain';
import { comparatorHistories } from '../../src/state/comparators';
import { found, gatherFound, isGathered, settleFound } from '../../src/state/found';
import { comparatorsIn, passIn } from '../../src/state/found-in';
import { setKit } from '../../src/state/kits';
import { leaveOut, passes } from '../../src/state/learning';
import { oldestFirst } from '../../src/state/oldest-first';
import { openShop } from '../../src/state/open-shop';
import { changeSetups } from '../../src/state/plate-changes';
import { archive, putBackPart, removePart } from '../../src/state/shelves';
import { parts, shop } from '../../src/state/shop';
import { summaries } from '../../src/state/summaries';
import type { InspectionRecord, PartRecord, StoredRecord } from '../../src/store/records';
import { loadChain, loadSummaries, save } from '../../src/store/shop-store';
import { noseSetup } from '../entry/support/setups';
import { micro } from '../entry/support/typed';
import { putAnything, storedAt } from '../store/support/database';
import { part } from '../store/support/samples';
import { saving, startAfresh } from './support/fresh';
import { BLOCK, compared, workOn } from './support/inspections';

const ALUMINIUM = { ...BLOCK, material: 'Aluminium' };

/** As in a page that was opened just now. */
async function reopen(): Promise<void> {
  await saving('saved');
  chain.value = undefined;
  found.value = new Map();
  summaries.value = new Map();
  parts.value = new Map();
  await openShop();
}

beforeEach(async () => {
  await startAfresh();
  await reopen();
});
afterEach(() => vi.restoreAllMocks());

const gather = () => gatherFound(() => true);

/** What the screens of comparators and rates have to tell. */
const told = () => ({
  comparators: comparatorHistories.value.map(({ name, points }) => [name, points]),
  passes: passes.value.map(({ work, wedge, counts }) => [work.id, wedge, counts]),
});

/** The same from every chain, read anew. */
async function fromChains() {
  const there = [...parts.value.values()].filter(({ example, removed }) => !example && !removed);
  const read = await Promise.all(
    there.map(async (one) => {
      const links: readonly Link[] = oldestFirst((await loadChain(one.id)).records);
      return {
        comparators: links.flatMap((link) =>
          link.kind === 'inspection' ? comparatorsIn(link, one.entry) : [],
        ),
        passes: links.flatMap((link) =>
          link.kind === 'work' ? passIn(link, links, one.entry) : [],
        ),
      };
    }),
  );
  return {
    values: read.flatMap(({ comparators }) => comparators.map(({ value }) => value)).sort(),
    passes: read
      .flatMap((one) => one.passes.map(({ work, wedge }) => `${work.id} ${wedge}`))
      .sort(),
  };
}

const inShort = ({ comparators, passes: all }: ReturnType<typeof told>) => ({
  values: comparators
    .flatMap(([, points]) => (points as unknown as { value: number }[]).map((one) => one.value))
    .sort(),
  passes: all.map(([id, wedge]) => `${id} ${wedge}`).sort(),
});

/** How many chains are read from here on. */
function chainsRead(): () => number {
  const getAll = vi.spyOn(IDBObjectStore.prototype, 'getAll').mockClear();
  return () =>
    getAll.mock.calls.filter(([range]) => {
      return String((range as IDBKeyRange | undefined)?.lower).startsWith('chain/');
    }).length;
}

/** A part with `readings` one after the other, some finished, and work between. */
function partWith(
  id: string,
  {
    readings,
    state,
  }: { readonly readings: readonly (readonly [number, boolean])[]; readonly state: string },
): readonly StoredRecord[] {
  const made = (minute: number) =>
    `2024-03-05T1${id.length}:${String(minute).padStart(2, '0')}:00.000Z`;
  const at = { at: made(50) };
  const record: PartRecord = {
    ...{ ...part(id), entry: ALUMINIUM, example: state === 'example' },
    ...(state === 'removed' && { removed: at }),
    ...(state === 'archived' && { archived: at }),
  };
  const links = readings.flatMap(([lean, isClosed], index): StoredRecord[] => {
    const closed = { at: made(2 * index + 1), part: ALUMINIUM, kit: shop.value.kit };
    const inspection = {
      ...compared(`${id} ${index}`, String(30 + lean), String(30 - lean)),
      part: id,
    };
    return [
      { ...inspection, made: made(2 * index), ...(isClosed && { closed }) },
      {
        ...{ ...workOn('bottom', '20'), id: `work ${id} ${index}`, part: id },
        ...{ after: inspection.id, made: made(2 * index + 1) },
      },
    ];
  });
  return [record, ...links];
}

const shops = fc
  .array(
    fc.record({
      readings: fc.array(fc.tuple(fc.integer({ min: -9, max: 9 }), fc.boolean()), { maxLength: 4 }),
      state: fc.constantFrom('bench', 'bench', 'archived', 'removed', 'example'),
    }),
    { maxLength: 4 },
  )
  .map((all) => all.flatMap((one, index) => partWith('p'.repeat(index + 1), one)));

describe('what the inspections of all parts have found', () => {
  it('is the same worked out, kept, and read from every chain', async () => {
    await fc.assert(
      fc.asyncProperty(shops, async (records) => {
        await startAfresh();
        await save(records);
        await reopen();
        await gather();
        const first = told();
        expect(inShort(first)).toEqual(await fromChains());
        await reopen();
        const read = chainsRead();
        await gather();
        expect(told()).toEqual(first);
        expect(read()).toBe(0);
        vi.restoreAllMocks();
      }),
      { numRuns: 12 },
    );
  });

  const TWO = {
    readings: [
      [3, true],
      [1, false],
    ],
    state: 'bench',
  } as const;

  async function kept(): Promise<void> {
    await save([...partWith('p', TWO), ...partWith('q', { ...TWO, readings: [[2, true]] })]);
    await reopen();
    await settleFound(() => true);
    await reopen();
  }

  it('is worked out again of the one part that was read or worked since', async () => {
    await kept();
    await openChain('p');
    const open = chain.value?.links.find((link) => link.kind === 'inspection' && !link.closed);
    changeSetups(open as InspectionRecord, () => [noseSetup({ right: '40', left: '38' })]);
    expect(summaries.value.get('p')?.found).toBeUndefined();
    await reopen();
    const read = chainsRead();
    await gather();
    // Once to work it out and once as it is kept, to see that nothing has changed meanwhile.
    expect(read()).toBe(2);
    expect(inShort(told())).toEqual(await fromChains());
  });

  it('is worked out again where open readings were reckoned with another kit', async () => {
    await kept();
    setKit({ ...shop.value.kit, seating: micro('2') });
    const read = chainsRead();
    await gather();
    expect(read()).toBe(2);
    const [, { expanded: doubt } = { expanded: 0 }] = found.value.get('p')?.comparators ?? [];
    await reopen();
    await gather();
    expect(found.value.get('p')?.comparators[1]?.expanded).toBe(doubt);
    expect(doubt).toBeGreaterThan(found.value.get('q')?.comparators[0]?.expanded ?? 0);
  });

  it.each([
    ['by another version of the method', { method: METHOD + 1 }],
    ['at another time than what lies there', { at: '2024-01-01T00:00:00.000Z' }],
    ['not at all, by an older version of the app', undefined],
  ])('is worked out again where it was marked %s', async (_, changed) => {
    await kept();
    const [summary] = (await loadSummaries()).records;
    const { found: mark, ...rest } = summary!;
    await save([{ ...rest, ...(changed && { found: { ...mark!, ...changed } }) }]);
    await putAnything('found/p', { ...((await storedAt('found/p')) as object), comparators: [] });
    await reopen();
    await gather();
    expect(inShort(told())).toEqual(await fromChains());
  });

  it('is worked out again where it is torn', async () => {
    await kept();
    await putAnything('found/p', { part: 'p', comparators: [{ at: 7 }] });
    await reopen();
    await gather();
    expect(inShort(told())).toEqual(await fromChains());
  });

  it('is not kept where the chain has become another one while it was worked out', async () => {
    await save(partWith('p', TWO));
    await reopen();
    const [last] = (await loadChain('p')).records.slice(-1);
    let hasChanged = false;
    await settleFound(() => {
      // Another window writes it, which had said before that its finds no longer hold.
      if (!hasChanged) void save([{ ...last!, changed: '2024-04-01T00:00:00.000Z' }]);
      hasChanged = true;
      return true;
    });
    expect(hasChanged).toBe(true);
    expect(summaries.value.get('p')?.found).toBeUndefined();
    expect(await storedAt('found/p')).toBeUndefined();
  });

  it('is nothing of a part that is removed, and of one that is archived stays', async () => {
    await kept();
    await gather();
    const both = told();
    archive(parts.value.get('q')!);
    expect(inShort(told())).toEqual(inShort(both));
    removePart(parts.value.get('p')!);
    expect(inShort(told())).toEqual(await fromChains());
    putBackPart(parts.value.get('p')!);
    expect(inShort(told())).toEqual(inShort(both));
    await saving('saved');
  });

  it('keeps that a pass was left out', async () => {
    await kept();
    await gather();
    await leaveOut(passes.value[0]!);
    await reopen();
    await gather();
    expect(passes.value.map(({ counts }) => counts)).toEqual([false]);
  });
});

it('is told as gathered only once nobody has broken it off', async () => {
  isGathered.value = false;
  await gatherFound(() => false);
  expect(isGathered.value).toBe(false);
  await gather();
  expect(isGathered.value).toBe(true);
});
