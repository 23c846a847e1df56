import { env } from 'node:process';
import { parse } from 'csv-parse/sync';
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { readCsv } from '../../src/exchange/csv/read-csv';
import { readingsCsv } from '../../src/exchange/csv/readings-table';
import { FileRefused } from '../../src/exchange/file-refused';
import { checkRecord } from '../../src/exchange/shape/check-record';
import { openTable } from '../../src/state/opened-table';
import { readTable, type TableRead } from '../../src/state/tables';
import { isWhole } from '../../src/store/whole/records';
import { inspection, part } from '../store/support/samples';
import { damagedTables } from './support/damaged-tables';

// `npm run attack:tables` sets these; the check goes by the same few each time.
const COUNT = Number(env.ATTACK_COUNT ?? 300);
const SEED = Number(env.ATTACK_SEED ?? 1);

const FORMULA = /^["\s]*[=+\-@＝＋－＠]/;
const NUMBER = /^-?\d+(\.\d+)?(e[+-]?\d+)?$/;

/** What is taken is a record of ours, which goes out again with nothing in it that a spreadsheet runs. */
function expectTakeable({ setups, leftOut, count }: TableRead): void {
  const at = inspection('i', 'p').made;
  const reasons = [...leftOut].map(([id, why]) => [id, { at, why }] as const);
  const record = { ...inspection('i', 'p'), setups, leftOut: Object.fromEntries(reasons) };
  expect(checkRecord(JSON.parse(JSON.stringify(record)))).toMatchObject({ ok: true });
  expect(isWhole(record)).toBe(true);
  const csv = readingsCsv(part('p', '=1'), [record]);
  // What is said twice of the same faces is said once.
  const isSaid = setups.some(({ kind }) => kind === 'assumed parallel');
  if (!isSaid) expect(readCsv(csv).length).toBeGreaterThan(count);
  for (const cell of (parse(csv, { bom: true }) as string[][]).flat()) {
    if (!NUMBER.test(cell)) expect(cell).not.toMatch(FORMULA);
  }
}

function expectTold({ problems, count, inspections }: TableRead): void {
  expect(problems.length + count).toBe(inspections[0]?.count ?? 0);
  for (const { line, message } of problems) {
    expect(line).toBeGreaterThan(1);
    expect(message.length).toBeGreaterThan(5);
    // A cell is told as it stands there, and no cell is longer than a thousand.
    expect(message.length).toBeLessThan(1400);
    const words = message.replace(/[‘“].*[’”]/gs, '');
    expect(words).not.toMatch(/NaN|undefined|\[object/);
  }
}

test(
  'a table is refused in words, or each row of it is taken whole or refused in words',
  async () => {
    const seen = { refused: 0, 'no table': 0, good: 0, bad: 0 };
    await fc.assert(
      fc.asyncProperty(damagedTables, async (file) => {
        try {
          const table = await openTable(file);
          if (table === undefined || table.contents === undefined) {
            seen['no table'] += 1;
            return;
          }
          const read = readTable(table.text, new Map(), 0);
          seen.good += read.count;
          seen.bad += read.problems.length;
          expectTold(read);
          expectTakeable(read);
        } catch (error) {
          if (!(error instanceof FileRefused)) throw error;
          expect(error.message).toMatch(/^[A-Z].{5,160}$/);
          seen.refused += 1;
        }
        expect(Object.keys(Object.prototype)).toEqual([]);
      }),
      { numRuns: COUNT, seed: SEED },
    );
    console.log(`seed ${SEED}: ${JSON.stringify(seen)}`);
    for (const times of Object.values(seen)) expect(times).toBeGreaterThan(0);
  },
  // This is only to end what hangs.
  120_000 + COUNT * 1000,
);
