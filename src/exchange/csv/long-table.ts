import { FileRefused } from '../file-refused';
import { matchHeading } from './columns';
import { type CsvRow, readCsvInTurns } from './read-csv';
import { cellsUnder, readRow } from './read-row';
import { type InspectionInTable, InspectionsInTable, rowsOf } from './table-kind';

/*
 * A table of a whole shop is gone through in turns, so that the screen stays alive, and none of its
 * rows is held but those of the inspection that is asked for.
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
}

/** Bad rows that are told one by one. */
export const TOLD = 100;

/** Rows that one inspection may have: more than anybody reads. */
const MOST = 5000;

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
  const bad: BadRow[] = [];
  let [rows, allBad] = [0, 0];
  const take = (some: readonly CsvRow[]) => {
    const isFirst = inspections === undefined;
    const below = isFirst ? some.slice(1) : some;
    inspections ??= new InspectionsInTable(some[0]);
    if (isFirst) wrongIn = wrongUnder(some[0]);
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
  return { inspections: inspections?.all() ?? [], rows, bad, allBad };
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

/**
 * The headings of a table and the rows of one inspection in it.
 *
 * @throws FileRefused where that has more rows than any inspection.
 */
export async function pickInspection(
  text: string,
  inspection: InspectionInTable,
  turn: Turn,
): Promise<readonly CsvRow[]> {
  if (inspection.count > MOST) {
    throw new FileRefused(`${inspection.count} rows are of one inspection, more than ${MOST}`);
  }
  const picked: CsvRow[] = [];
  const take = (some: readonly CsvRow[]) => {
    const [head = some[0]] = picked;
    if (picked.length === 0 && head !== undefined) picked.push(head);
    const below = head === some[0] ? some.slice(1) : some;
    picked.push(...rowsOf(inspection, head, below));
  };
  await readCsvInTurns(text, take, turn);
  return picked;
}
