import { allFindings } from '../core/inspection/any-finding';
import { READING_HEADINGS, readingsLines } from '../exchange/csv/readings-table';
import { RESULT_HEADINGS, resultsLines } from '../exchange/csv/results-table';
import { csvHead } from '../exchange/csv/write-csv';
import type { InspectionRecord, PartRecord } from '../store/records';
import { saidByThisMethod } from '../store/said';
import { loadChain } from '../store/shop-store';
import { workOutFlat } from './answers';
import { workOutApart } from './answers-apart';
import { oldestFirst } from './oldest-first';
import { untilSaved } from './saving';
import { now, parts } from './shop';
import { turns } from './turns';

/** What a table of the whole shop has a row for. */
export type ShopTable = 'readings' | 'results';

const HEADINGS: Readonly<Record<ShopTable, readonly string[]>> = {
  readings: READING_HEADINGS,
  results: RESULT_HEADINGS,
};

/** Characters that are gathered before the browser is given them to keep. */
const PIECE = 500_000;

/** The parts of which the tables tell: not the invented one, and none that was removed. */
export function partsInTables(): readonly PartRecord[] {
  return [...parts.value.values()].filter(({ example, removed }) => !example && !removed);
}

/**
 * Every reading or every result of the shop as a CSV file, made part by part, so that the screen has
 * its turn between; undefined where `isWanted` says no more.
 *
 * @param progress is told how many parts are done.
 */
export async function shopTable(
  table: ShopTable,
  progress: (parts: number) => void,
  isWanted: () => boolean,
): Promise<File | undefined> {
  await untilSaved();
  const pieces: Blob[] = [];
  let text = csvHead(HEADINGS[table]);
  let done = 0;
  const turn = turns();
  for (const part of partsInTables()) {
    for (const inspection of await inspectionsOf(part)) {
      await turn();
      if (!isWanted()) return undefined;
      text += await linesOf(table, part, inspection);
    }
    if (text.length > PIECE) {
      pieces.push(new Blob([text]));
      text = '';
    }
    done += 1;
    progress(done);
  }
  const name = `highedge ${table} ${now().slice(0, 10)}.csv`;
  return new File([...pieces, text], name, { type: 'text/csv' });
}

async function inspectionsOf({ id }: PartRecord): Promise<readonly InspectionRecord[]> {
  const { records } = await loadChain(id);
  return oldestFirst(records.filter((record) => record.kind === 'inspection'));
}

async function linesOf(
  table: ShopTable,
  part: PartRecord,
  inspection: InspectionRecord,
): Promise<string> {
  if (table === 'readings') return readingsLines(part, [inspection]);
  const findings = await findingsOf(inspection, part);
  return resultsLines(part, [{ inspection, findings }]);
}

/** Form takes long: what was said of it when the readings were finished stands in the table. */
async function findingsOf(inspection: InspectionRecord, { entry }: PartRecord) {
  const isSaid = saidByThisMethod(inspection) !== undefined;
  const { answer } = isSaid
    ? workOutFlat(inspection, entry)
    : await workOutApart(inspection, entry);
  return allFindings(answer);
}
