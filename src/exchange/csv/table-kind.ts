import { type Column, matchHeading } from './columns';
import type { CsvRow } from './read-csv';
import { RESULT_HEADINGS } from './results-table';

/** What rows of a table name as the inspection that they are of. */
export interface InspectionName {
  readonly part: string;
  readonly job: string;
  /** When it was taken, as it stands there. */
  readonly taken: string;
}

/** Readings of one inspection in a table. */
export interface InspectionInTable extends InspectionName {
  /** How many rows they are. */
  readonly count: number;
}

/** What a table is, by its headings. */
export type TableKind =
  | { readonly kind: 'readings'; readonly inspections: readonly InspectionInTable[] }
  /** Results are worked out from readings: they are never taken in. */
  | { readonly kind: 'results' };

export function tableKind([head, ...rows]: readonly CsvRow[]): TableKind {
  if (isResults(head)) return { kind: 'results' };
  const inspections = new InspectionsInTable(head);
  inspections.add(rows);
  return { kind: 'readings', inspections: inspections.all() };
}

/** Whether a table has the headings of results. */
export function isResults(head: CsvRow | undefined): boolean {
  const headings = (head?.cells ?? []).map((cell) => cell.trim().toLowerCase());
  return RESULT_HEADINGS.every((heading) => headings.includes(heading));
}

/** Tells which inspection a row is of, by its part, job and time. */
function inspectionNamer(head: CsvRow | undefined): (row: CsvRow) => InspectionName {
  const columns = (head?.cells ?? []).map((heading) => matchHeading(heading)?.column);
  const place = (column: Column) => columns.indexOf(column);
  const [part, job, taken] = [place('part'), place('job'), place('taken')];
  return ({ cells }) => {
    const cell = (index: number) => (cells[index] ?? '').trim();
    return { part: cell(part), job: cell(job), taken: cell(taken) };
  };
}

/** The inspections of a table, in the order that they first stand in, counted as its rows are gone through. */
export class InspectionsInTable {
  readonly #nameOf: (row: CsvRow) => InspectionName;
  readonly #counts = new Map<string, { readonly name: InspectionName; count: number }>();

  constructor(head: CsvRow | undefined) {
    this.#nameOf = inspectionNamer(head);
  }

  add(rows: readonly CsvRow[]): void {
    for (const row of rows) {
      const name = this.#nameOf(row);
      const key = keyOf(name);
      const known = this.#counts.get(key);
      if (known === undefined) this.#counts.set(key, { name, count: 1 });
      else known.count += 1;
    }
  }

  all(): readonly InspectionInTable[] {
    return [...this.#counts.values()].map(({ name, count }) => ({ ...name, count }));
  }
}

/** The rows that are of `inspection`. */
export function rowsOf(
  inspection: InspectionName,
  head: CsvRow | undefined,
  rows: readonly CsvRow[],
): readonly CsvRow[] {
  const find = inspectionFinder(head, [inspection]);
  return rows.filter((row) => find(row) !== undefined);
}

/** Tells which of `inspections` a row is of. */
export function inspectionFinder<I extends InspectionName>(
  head: CsvRow | undefined,
  inspections: readonly I[],
): (row: CsvRow) => I | undefined {
  const nameOf = inspectionNamer(head);
  const byKey = new Map(inspections.map((inspection) => [keyOf(inspection), inspection]));
  return (row) => byKey.get(keyOf(nameOf(row)));
}

function keyOf({ part, job, taken }: InspectionName): string {
  return JSON.stringify([part, job, taken]);
}
