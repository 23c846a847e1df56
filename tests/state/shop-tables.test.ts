import { parse } from 'csv-parse/sync';
import { beforeEach, describe, expect, it } from 'vitest';
import { METHOD } from '../../src/core/inspection/method';
import { readCsv } from '../../src/exchange/csv/read-csv';
import { tableKind } from '../../src/exchange/csv/table-kind';
import { openShop } from '../../src/state/open-shop';
import { shop } from '../../src/state/shop';
import { partsInTables, type ShopTable, shopTable } from '../../src/state/shop-tables';
import type { InspectionRecord } from '../../src/store/records';
import { save } from '../../src/store/shop-store';
import { part } from '../store/support/samples';
import { startAfresh } from './support/fresh';
import { BLOCK, compared, swept } from './support/inspections';

beforeEach(startAfresh);

const named = (id: string, name: string) => ({ ...part(id), entry: { ...BLOCK, name } });
const of = (id: string, record: InspectionRecord) => ({ ...record, part: id });

async function table(which: ShopTable): Promise<Record<string, string>[]> {
  const told: number[] = [];
  const file = await shopTable(
    which,
    (parts) => told.push(parts),
    () => true,
  );
  expect(told).toEqual(partsInTables().map((_, index) => index + 1));
  expect(file?.name).toBe(`highedge ${which} 2024-03-05.csv`);
  return parse(await file!.text(), { bom: true, columns: true });
}

async function shopOfTwo(): Promise<void> {
  await save([
    named('a', '=HYPERLINK("x")'),
    of('a', compared('a1', '34', '31')),
    of('a', { ...compared('a2', '-33', '32'), made: '2024-03-06T14:07:00.000Z' }),
    { ...named('b', 'Second, part'), archived: { at: '2024-03-05T14:07:00.000Z' } },
    of('b', compared('b1', '1.5', '0')),
    { ...named('c', 'Removed'), removed: { at: '2024-03-05T14:07:00.000Z' } },
    of('c', compared('c1', '9', '9')),
    { ...named('d', 'Invented'), example: true },
    of('d', compared('d1', '8', '8')),
  ]);
  await openShop();
}

describe('the whole shop as a table', () => {
  it('has every reading of every part that is there, formulas disarmed', async () => {
    await shopOfTwo();
    const rows = await table('readings');
    const said = rows.map((row) => [
      row.part,
      row.taken,
      row['reading (µm)'],
      row['parallel within (µm)'],
    ]);
    const [first, second] = ['2024-03-05T14:07:00.000Z', '2024-03-06T14:07:00.000Z'];
    const disarmed = `'=HYPERLINK("x")`;
    expect(said).toEqual([
      [disarmed, first, '34', ''],
      [disarmed, first, '31', ''],
      [disarmed, first, '', '1'],
      [disarmed, second, '-33', ''],
      [disarmed, second, '32', ''],
      [disarmed, second, '', '1'],
      ['Second, part', first, '1.5', ''],
      ['Second, part', first, '0', ''],
      ['Second, part', first, '', '1'],
    ]);
  });

  it('has every result, a row for each requirement of each inspection', async () => {
    await shopOfTwo();
    const rows = await table('results');
    expect(rows.map((row) => [row.part, row.face, row.verdict]).slice(-2)).toEqual([
      ['Second, part', 'right', 'in'],
      ['Second, part', 'left', 'in'],
    ]);
    expect(rows).toHaveLength(3 * 2);
    // (34 - 31) / 2 over 74 mm, told over 90 mm.
    expect(Number(rows[0]?.['width (µm)'])).toBeCloseTo((3 / 148) * 90, 6);
  });

  it('is told apart again when it is opened: each inspection by itself', async () => {
    await shopOfTwo();
    const file = await shopTable(
      'readings',
      () => undefined,
      () => true,
    );
    const kind = tableKind(readCsv(await file!.text()));
    expect(
      kind.kind === 'readings' && kind.inspections.map(({ part, count }) => [part, count]),
    ).toEqual([
      ['=HYPERLINK("x")', 3],
      ['=HYPERLINK("x")', 3],
      ['Second, part', 3],
    ]);
  });

  it('ends where it is not wanted any more', async () => {
    await shopOfTwo();
    let parts = 0;
    const file = await shopTable(
      'readings',
      (count) => (parts = count),
      () => parts < 1,
    );
    expect([file, parts]).toEqual([undefined, 1]);
  });

  it('has form worked out where there is some, unless it was when the readings were finished', async () => {
    const bowed = of('a', swept('21'));
    await save([named('a', 'Swept'), bowed]);
    await openShop();
    const [worked] = (await table('results')).filter((row) => row['width with form (µm)'] !== '');
    expect(Number(worked?.['probability of conformity (1)'])).toBeGreaterThan(0);
    const found = { value: 1, expanded: 1, probability: 0.25, verdict: 'out' as const };
    const said = BLOCK.requirements.map(({ id }) => {
      return { requirement: id, found: { ...found, withForm: { width: 7, low: 6, high: 8 } } };
    });
    const { kit } = shop.value;
    const closed = { at: bowed.made, part: BLOCK, kit, level: '95', method: METHOD, said };
    await save([{ ...bowed, closed }]);
    const [kept] = (await table('results')).filter((row) => row['width with form (µm)'] !== '');
    expect(kept).toMatchObject({ 'width with form (µm)': '7', verdict: 'out' });
  });
});
