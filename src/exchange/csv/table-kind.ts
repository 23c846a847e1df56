import { type Column, matchHeading } from './columns';
import type { CsvRow } from './read-csv';
import { RESULT_HEADINGS } from './results-table';

/** Readings of one inspection in a table, as its rows name it. */
export interface InspectionInTable {
  readonly part: string;
  readonly job: string;
  /** When it was taken, as it stands there. */
  readonly taken: string;
  readonly rows: readonly CsvRow[];
}

/** What a table is, by its headings. */
export type TableKind =
  | { readonly kind: 'readings'; readonly inspections: readonly InspectionInTable[] }
  /** Results are worked out from readings: they are never taken in. */
  | { readonly kind: 'results' };

export function tableKind([head, ...rows]: readonly CsvRow[]): TableKind {
  const headings = (head?.cells ?? []).map((cell) => cell.trim().toLowerCase());
  const isResults = RESULT_HEADINGS.every((heading) => headings.includes(heading));
  if (isResults) return { kind: 'results' };
  return { kind: 'readings', inspections: inspectionsIn(rows, head?.cells ?? []) };
}

/** Rows that name the same part, job and time, together, in the order that they stand in. */
function inspectionsIn(
  rows: readonly CsvRow[],
  headings: readonly string[],
): readonly InspectionInTable[] {
  const columns = headings.map((heading) => matchHeading(heading)?.column);
  const cell = ({ cells }: CsvRow, column: Column) => (cells[columns.indexOf(column)] ?? '').trim();
  const inspections = new Map<string, InspectionInTable & { readonly rows: CsvRow[] }>();
  for (const row of rows) {
    const [part, job, taken] = [cell(row, 'part'), cell(row, 'job'), cell(row, 'taken')];
    const key = JSON.stringify([part, job, taken]);
    const known = inspections.get(key);
    if (known === undefined) inspections.set(key, { part, job, taken, rows: [row] });
    else known.rows.push(row);
  }
  return [...inspections.values()];
}
