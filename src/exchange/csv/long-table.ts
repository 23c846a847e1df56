import { FileRefused } from '../file-refused';
import { matchHeading } from './columns';
import { type CsvRow, readCsvInTurns } from './read-csv';
import { cellsUnder, readRow } from './read-row';
import { type InspectionInTable, InspectionsInTable, inspectionFinder } from './table-kind';

/*
 * A table of a whole shop is gone through in turns, so that the screen stays alive, and none of its
 * rows is held but those of the inspections that are asked for.
 */

/** A row that cannot be taken. */
export interface BadRow {
  readonly line: number;
  readonly message: string;
}

/** What a table of readings holds. */
export interface TableContents {
  readonly inspections: readonly InspectionInTable[];
  /** Its rows but for the headings. */
  readonly rows: number;
  /** The first rows that cannot be taken, and how many there are in all; none where a heading is not known, for what it means is chosen later. */
  readonly bad: readonly BadRow[];
  readonly allBad: number;
  /** Headings that are none of ours. */
  readonly unknown: readonly string[];
}

/** Bad rows that are told one by one. */
export const TOLD = 100;

/** Rows that one inspection may have: more than anybody reads. */
export const MOST_ROWS = 5000;

type Turn = () => Promise<void>;

/**
 * Goes through a whole table of readings.
 *
 * @param progress is told how many rows are done.
 * @throws FileRefused where it is longer or wider than any.
 */
export async function lookThrough(
  text: string,
  turn: Turn,
  progress: (rows: number) => void,
): Promise<TableContents> {
  let inspections: InspectionsInTable | undefined;
  let wrongIn: (row: CsvRow) => string | undefined = () => undefined;
  let unknown: readonly string[] = [];
  const bad: BadRow[] = [];
  let [rows, allBad] = [0, 0];
  const take = (some: readonly CsvRow[]) => {
    const isFirst = inspections === undefined;
    const below = isFirst ? some.slice(1) : some;
    inspections ??= new InspectionsInTable(some[0]);
    if (isFirst) {
      wrongIn = wrongUnder(some[0]);
      unknown = (some[0]?.cells ?? []).filter((heading) => matchHeading(heading) === undefined);
    }
    inspections.add(below);
    for (const row of below) {
      const message = wrongIn(row);
      if (message === undefined) continue;
      allBad += 1;
      if (bad.length < TOLD) bad.push({ line: row.line, message });
    }
    rows += below.length;
    progress(rows);
  };
  await readCsvInTurns(text, take, turn);
  return { inspections: inspections?.all() ?? [], rows, bad, allBad, unknown };
}

/** What is wrong with a row below the headings. */
function wrongUnder(head: CsvRow | undefined): (row: CsvRow) => string | undefined {
  const columns = (head?.cells ?? []).map(matchHeading);
  if (columns.includes(undefined)) return () => undefined;
  const cellsOf = cellsUnder(columns);
  return (row) => {
    const read = row.problem ?? readRow(cellsOf(row));
    return typeof read === 'string' ? read : undefined;
  };
}

/** Rows of some inspections of a table. */
export interface PickedRows {
  readonly head: CsvRow;
  readonly rows: ReadonlyMap<InspectionInTable, readonly CsvRow[]>;
}

/**
 * The headings of a table and the rows of each of `inspections`, which are of it.
 *
 * @throws FileRefused where one of them has more rows than any inspection.
 */
export async function pickInspections(
  text: string,
  inspections: readonly InspectionInTable[],
  turn: Turn,
): Promise<PickedRows> {
  for (const { count } of inspections) {
    if (count <= MOST_ROWS) continue;
    throw new FileRefused(`${count} rows are of one inspection, more than ${MOST_ROWS}`);
  }
  const rows = new Map(inspections.map((inspection) => [inspection, [] as CsvRow[]]));
  let head: CsvRow | undefined;
  let find: (row: CsvRow) => InspectionInTable | undefined = () => undefined;
  const take = (some: readonly CsvRow[]) => {
    const below = head === undefined ? some.slice(1) : some;
    if (head === undefined && some[0] !== undefined) {
      [head] = some;
      find = inspectionFinder(head, inspections);
    }
    for (const row of below) {
      const inspection = find(row);
      if (inspection !== undefined) rows.get(inspection)?.push(row);
    }
  };
  await readCsvInTurns(text, take, turn);
  if (head === undefined) throw new Error('The inspections are of another table');
  return { head, rows };
}
