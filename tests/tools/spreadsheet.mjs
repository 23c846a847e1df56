// @ts-check
/**
 * Opens our tables of readings and of results in LibreOffice, which must find the same numbers and no
 * formula in them: `node tests/tools/spreadsheet.mjs`, after a change of what the tables hold. Takes
 * LibreOffice's `soffice`; the checks that need no program of the system are in tests/exchange.
 */
import { execFileSync } from 'node:child_process';
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { exit } from 'node:process';
import { parse } from 'csv-parse/sync';
import { load } from '../bench/support/measure.mjs';

/** @typedef {import('../../src/store/records').PartRecord} PartRecord */
/** @typedef {import('../../src/store/records').InspectionRecord} InspectionRecord */

/** @type {typeof import('../../src/exchange/csv/readings-table')} */
const { readingsCsv } = await load('./src/exchange/csv/readings-table.ts');
/** @type {typeof import('../../src/exchange/csv/results-table')} */
const { resultsCsv } = await load('./src/exchange/csv/results-table.ts');

/** @type {typeof import('../../src/state/answers')} */
const { workOut } = await load('./src/state/answers.ts');
/** @type {typeof import('../../src/core/inspection/any-finding')} */
const { allFindings } = await load('./src/core/inspection/any-finding.ts');

/** Comma, double quote, UTF-8, from the first line, as a person would choose them. */
const AS_CSV = 'CSV:44,34,76,1';
const FORMULA = '=1+1';

/** @type {Record<string, PartRecord | InspectionRecord>} */
const sample = JSON.parse(
  readFileSync(new URL('../store/samples/format-2.json', import.meta.url), 'utf8'),
);
const all = Object.values(sample);
const parts = all.filter((record) => record.kind === 'part');
const inspections = all.filter((record) => record.kind === 'inspection');

/**
 * The values that LibreOffice finds in a table, in order: numbers as numbers, all else as text.
 *
 * @param {string} folder @param {string} csv
 */
function opened(folder, csv) {
  const file = join(folder, 'table.csv');
  writeFileSync(file, csv);
  const args = ['--headless', `-env:UserInstallation=file://${folder}/profile`];
  execFileSync('soffice', [
    ...args,
    ...[`--infilter=${AS_CSV}`, '--convert-to', 'fods', '--outdir', folder, file],
  ]);
  const sheet = readFileSync(join(folder, 'table.fods'), 'utf8');
  const cells = [...sheet.matchAll(/<table:table-cell\b([^>]*)>/g)].map(([, said = '']) => said);
  return {
    formulas: cells.filter((cell) => cell.includes('table:formula')).length,
    numbers: cells.flatMap((cell) => {
      const value = /office:value-type="float" office:value="([^"]*)"/.exec(cell)?.[1];
      const times = Number(/number-columns-repeated="(\d+)"/.exec(cell)?.[1] ?? 1);
      return value === undefined ? [] : Array.from({ length: times }, () => Number(value));
    }),
  };
}

/** @param {string} csv */
function written(csv) {
  /** @type {string[][]} */
  const rows = parse(csv, { bom: true });
  return rows.flat().flatMap((cell) => (/^-?\d+(\.\d+)?$/.test(cell) ? [Number(cell)] : []));
}

let failed = false;
const folder = mkdtempSync(join(tmpdir(), 'highedge-table-'));
try {
  for (const part of parts) {
    const named = { ...part, entry: { ...part.entry, name: FORMULA, job: `+${FORMULA}` } };
    const own = inspections.filter((one) => one.part === part.id);
    const results = own.map((inspection) => ({
      inspection,
      findings: allFindings(workOut(inspection, part.entry).answer),
    }));
    for (const csv of [readingsCsv(named, own), resultsCsv(named, results)]) {
      const [found, wanted] = [opened(folder, csv), written(csv)];
      const isSame = JSON.stringify(found.numbers) === JSON.stringify(wanted);
      console.log(
        `${wanted.length} numbers, ${found.formulas} formulas: ${isSame ? 'the same' : 'NOT THE SAME'}`,
      );
      failed ||= !isSame || found.formulas > 0;
    }
  }
} finally {
  rmSync(folder, { recursive: true });
}
exit(failed ? 1 : 0);
