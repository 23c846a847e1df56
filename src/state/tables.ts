import { allFindings } from '../core/inspection/any-finding';
import {
  type Column,
  headingOf,
  type Matched,
  matchHeading,
  unitNamedIn,
} from '../exchange/csv/columns';
import { pickInspections } from '../exchange/csv/long-table';
import { type CsvRow, readCsv } from '../exchange/csv/read-csv';
import { type ReadingsRead, readReadings } from '../exchange/csv/read-readings';
import { readingsCsv } from '../exchange/csv/readings-table';
import { resultsCsv } from '../exchange/csv/results-table';
import { type InspectionInTable, rowsOf, tableKind } from '../exchange/csv/table-kind';
import { FileRefused } from '../exchange/file-refused';
import type { InspectionRecord, PartRecord } from '../store/records';
import { workOut } from './answers';
import { addInspection } from './inspections';
import type { OpenedTable } from './opened-table';
import { newId, now } from './shop';
import { turns } from './turns';

/** Every reading of the inspections as a CSV file. */
export function readingsFile(part: PartRecord, inspections: readonly InspectionRecord[]): File {
  return csvFile(part, 'readings', readingsCsv(part, inspections));
}

/** What the inspections say of every requirement as a CSV file. */
export function resultsFile(part: PartRecord, inspections: readonly InspectionRecord[]): File {
  const results = inspections.map((inspection) => ({
    inspection,
    findings: allFindings(workOut(inspection, part.entry).answer),
  }));
  return csvFile(part, 'results', resultsCsv(part, results));
}

function csvFile({ entry }: PartRecord, what: string, text: string): File {
  // Marks that a file's name cannot have anywhere.
  const plain = entry.name.trim().replace(/[\\/:*?"<>|\p{Cc}]+/gu, '-') || 'Part';
  return new File([text], `${plain} ${what}.csv`, { type: 'text/csv' });
}

/** A table as it was read: what its columns mean, and what the readings come to. */
export interface TableRead extends ReadingsRead {
  /** The headings of the file, and what each is taken for. */
  readonly columns: readonly { readonly heading: string; readonly matched: Matched | undefined }[];
  /** The inspections that it holds: only one of them is read. */
  readonly inspections: readonly InspectionInTable[];
}

/** Characters that may be pasted: what is longer is chosen as a file, which is gone through in turns. */
const MOST_PASTED = 2_000_000;

/**
 * Reads one inspection out of a table of readings, its headings in the first line.
 *
 * @param chosen what a person takes columns for, by their place, in place of what the heading says.
 * @param inspection which of the inspections in it, counted from 0.
 * @throws FileRefused where it is longer than what can be pasted, or of results.
 */
export function readTable(text: string, chosen: Chosen, inspection: number): TableRead {
  if (text.length > MOST_PASTED) throw new FileRefused('It is too long to paste: choose the file');
  const all = readCsv(text);
  const [head, ...below] = all;
  const table = tableKind(all);
  if (table.kind === 'results') throw new FileRefused(RESULTS);
  const { inspections } = table;
  const asked = inspections[inspection];
  const rows = asked === undefined ? [] : rowsOf(asked, head, below);
  return { inspections, ...readRows(head, rows, chosen) };
}

/** What a person takes columns for, by their place. */
export type Chosen = ReadonlyMap<number, Column | 'none'>;

/** The inspection out of a long table that was gone through. */
export async function readFromLong(
  { text }: OpenedTable,
  inspection: InspectionInTable,
): Promise<(chosen: Chosen) => TableRead> {
  const { head, rows } = await pickInspections(text, [inspection], turns());
  const own = rows.get(inspection) ?? [];
  return (chosen) => ({ inspections: [inspection], ...readRows(head, own, chosen) });
}

function readRows(
  head: CsvRow | undefined,
  rows: readonly CsvRow[],
  chosen: Chosen,
): Omit<TableRead, 'inspections'> {
  const columns = (head?.cells ?? []).map((heading, index) => {
    return { heading, matched: matchedAs(heading, chosen.get(index)) };
  });
  const matched = columns.map((column) => column.matched);
  return { columns, ...readReadings(rows, matched, newId) };
}

const RESULTS =
  'It holds results, which are worked out anew from readings: take the table of readings instead';

function matchedAs(heading: string, column: Column | 'none' | undefined): Matched | undefined {
  if (column === undefined) return matchHeading(heading);
  if (column === 'none') return undefined;
  const unit = unitNamedIn(heading);
  const own = headingOf(column);
  const named = unit === undefined ? own : own.replace(/ \(.*$/, ` (${unit})`);
  return matchHeading(named) ?? matchHeading(own);
}

/** Keeps the readings of a table as a new inspection of the part; those that the table says were left out stay so. */
export function takeTable(part: string, { setups, leftOut }: ReadingsRead): InspectionRecord {
  return addInspection(part, setups, reasonsAt(now(), leftOut));
}

/** Why readings were left out, as it is kept: noted at that time. */
export function reasonsAt(at: string, leftOut: ReadingsRead['leftOut']) {
  return Object.fromEntries([...leftOut].map(([id, why]) => [id, { at, why }] as const));
}
