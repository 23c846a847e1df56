import { beforeEach, describe, expect, it, vi } from 'vitest';
import { writeCsv } from '../../src/exchange/csv/write-csv';
import { doJob } from '../../src/exchange/jobs';
import { openShop } from '../../src/state/open-shop';
import { type OpenedTable, openTable } from '../../src/state/opened-table';
import { parts } from '../../src/state/shop';
import { shopTable } from '../../src/state/shop-tables';
import { planWhole, wholeTableAsBackup } from '../../src/state/whole-table';
import type { InspectionRecord } from '../../src/store/records';
import { loadChain, save } from '../../src/store/shop-store';
import { emptyDatabase } from '../store/support/database';
import { part } from '../store/support/samples';
import { startAfresh } from './support/fresh';
import { BLOCK, compared } from './support/inspections';

const NOW = '2024-03-09T10:00:00.000Z';
const HEAD = { made: NOW, app: '0.1.0' };
const HEADINGS = [
  'part',
  'job',
  'taken',
  'face',
  'nose height (mm)',
  'height (mm)',
  'reading (µm)',
];

beforeEach(async () => {
  await startAfresh();
  vi.setSystemTime(NOW);
  vi.stubGlobal('__APP_VERSION__', '0.1.0');
});

type Row = readonly [part: string, job: string, taken: string, reading: number, face?: string];

function tableOf(rows: readonly Row[], headings = HEADINGS): Promise<OpenedTable> {
  const cells = rows.map(([name, job, taken, reading, face = 'right']) => {
    return [name, job, taken, face, 6, 80, reading];
  });
  return opened(new File([writeCsv(headings, cells)], 'moved.csv'));
}

async function opened(file: File): Promise<OpenedTable> {
  const table = await openTable(file);
  if (table === undefined) throw new Error('It is no table');
  return table;
}

async function takeWhole(table: OpenedTable): Promise<void> {
  await doJob({ kind: 'merge', file: await wholeTableAsBackup(table), head: HEAD }, () => {});
  await openAnew();
}

/** The shop as the next page reads it. */
function openAnew(): Promise<void> {
  parts.value = new Map();
  return openShop();
}

async function readingsOf(id: string) {
  const { records } = await loadChain(id);
  const inspections = records.filter((one): one is InspectionRecord => one.kind === 'inspection');
  return inspections
    .map(({ made, setups }) => [
      made,
      setups.flatMap((setup) =>
        setup.kind === 'nose comparator' ? setup.placings.map(({ reading }) => reading.text) : [],
      ),
    ])
    .sort();
}

const idOf = (name: string) =>
  [...parts.value.values()].find(({ entry }) => entry.name === name)?.id ?? '';

describe('a whole table', () => {
  it('goes to its parts by name and job, and to new ones where there is none', async () => {
    await save([{ ...part('a'), entry: { ...BLOCK, name: ' Block', job: '7' } }]);
    await openShop();
    const table = await tableOf([
      ['Block', '7', '2024-03-01T08:00:00.000Z', 34],
      ['Block', '7', '2024-03-02', 35],
      ['Block', '8', '2024-03-01T08:00Z', 36],
      ['Block', '7', '2024-03-01T08:00:00.000Z', 31, 'left'],
    ]);
    const { taken, newParts, here, unclear } = await planWhole(table);
    expect(taken.map((one) => [one.part.entry.job, one.inspection.count])).toEqual([
      ['7', 2],
      ['7', 1],
      ['8', 1],
    ]);
    expect([newParts, here, unclear]).toEqual([1, [], []]);
    await takeWhole(table);
    expect(await readingsOf('a')).toEqual([
      ['2024-03-01T08:00:00.000Z', ['34', '31']],
      ['2024-03-02T00:00:00.000Z', ['35']],
    ]);
    expect([...parts.value.values()].map(({ entry }) => entry.job)).toEqual(['7', '8']);
    expect(await readingsOf(idOf('Block'))).toEqual([['2024-03-01T08:00:00.000Z', ['36']]]);
  });

  it('changes nothing the second time', async () => {
    const rows: Row[] = [
      ['Block', '', '2024-03-01T08:00Z', 34],
      ['Plate', '', '2024-03-01T08:00Z', 5],
    ];
    await takeWhole(await tableOf(rows));
    const again = await planWhole(await tableOf(rows));
    expect([again.taken, again.here.length]).toEqual([[], 2]);
    expect(parts.value.size).toBe(2);
  });

  it('guesses neither part nor time', async () => {
    await save([
      { ...part('a'), entry: { ...BLOCK, name: 'Twice', job: '' } },
      { ...part('b'), entry: { ...BLOCK, name: 'Twice', job: '' } },
    ]);
    await openShop();
    const table = await tableOf([
      ['Twice', '', '2024-03-01', 1],
      ['', '7', '2024-03-01', 2],
      ['Block', '', '3/4/2024', 3],
      ['Block', '', '', 4],
      ['Block', '', '2024-03-10', 5],
      ['Block', '', '2024-02-29', 6],
    ]);
    const { taken, unclear } = await planWhole(table);
    expect(taken.map(({ inspection }) => inspection.taken)).toEqual(['2024-02-29']);
    expect(unclear).toHaveLength(5);
    await takeWhole(table);
    expect(parts.value.size).toBe(3);
  });

  it('leaves bad rows out, and begins no part for them alone', async () => {
    const table = await tableOf([
      ['Block', '', '2024-03-01', 1],
      ['Block', '', '2024-03-01', 2, 'side'],
      ['Bad', '', '2024-03-01', 3, 'side'],
    ]);
    expect(table.contents?.allBad).toBe(2);
    await takeWhole(table);
    expect([...parts.value.values()].map(({ entry }) => entry.name)).toEqual(['Block']);
    expect(await readingsOf(idOf('Block'))).toEqual([['2024-03-01T00:00:00.000Z', ['1']]]);
  });

  it('can be put back: what was here is as before', async () => {
    await save([{ ...part('a'), entry: { ...BLOCK, name: 'Block', job: '' } }]);
    await openShop();
    await takeWhole(
      await tableOf([
        ['Block', '', '2024-03-01', 1],
        ['New', '', '2024-03-01', 2],
      ]),
    );
    await doJob({ kind: 'put back', at: NOW }, () => {});
    await openAnew();
    expect(await readingsOf('a')).toEqual([]);
    expect(parts.value.get(idOf('New'))?.removed).toBeDefined();
  });

  it('is the same shop on another device, as far as a table tells of it', async () => {
    const two = { ...compared('i2', '-33', '32'), made: '2024-03-06T14:07:00.000Z' };
    await save([
      { ...part('a'), entry: { ...BLOCK, name: 'Block', job: '7' } },
      { ...compared('i1', '34', '31'), part: 'a' },
      { ...two, part: 'a', leftOut: { [idOfFirst(two)]: { at: NOW, why: 'a burr' } } },
    ]);
    await openShop();
    const file = await shopTable(
      'readings',
      () => {},
      () => true,
    );
    expect((await planWhole(await opened(file!))).here).toHaveLength(2);
    await emptyDatabase();
    parts.value = new Map();
    await takeWhole(await opened(file!));
    const back = await shopTable(
      'readings',
      () => {},
      () => true,
    );
    expect(await back!.text()).toBe(await file!.text());
  });
});

function idOfFirst({ setups }: InspectionRecord): string {
  const [setup] = setups;
  if (setup?.kind !== 'nose comparator') throw new Error('It was compared');
  return setup.placings[0]?.id ?? '';
}
