import { fromMicrometres, type LengthUnit } from '../../core/units/length';
import { type ReadingRow, readingRows } from '../../entry/reading-rows';
import { isBlank, readTyped, type TypedLength } from '../../entry/typed-length';
import type { InspectionRecord, PartRecord } from '../../store/records';
import { COLUMN_NAMES, COLUMNS, type Column, headingOf } from './columns';
import { type Cell, csvHead, csvLines } from './write-csv';

/** The headings, with units. */
export const READING_HEADINGS = COLUMN_NAMES.map((name) => headingOf(name));

/** Every reading of the inspections, a row for each, as CSV. Lengths are in the unit of the heading. */
export function readingsCsv(part: PartRecord, inspections: readonly InspectionRecord[]): string {
  return `${csvHead(READING_HEADINGS)}${readingsLines(part, inspections)}`;
}

/** The same without the headings. */
export function readingsLines(part: PartRecord, inspections: readonly InspectionRecord[]): string {
  const rows = inspections.flatMap((inspection) =>
    readingRows(inspection.setups).map((row) =>
      COLUMN_NAMES.map((column) => cellOf(column, row, inspection, part)),
    ),
  );
  return csvLines(rows);
}

function cellOf(
  column: Column,
  row: ReadingRow,
  { made, leftOut = {} }: InspectionRecord,
  { entry }: PartRecord,
): Cell {
  switch (column) {
    case 'part':
      return entry.name;
    case 'job':
      return entry.job;
    case 'taken':
      return made;
    case 'way':
      return row.kind;
    case 'setup':
    case 'placing':
      return row[column];
    case 'face':
      return row.face;
    case 'base':
      return row.base ?? '';
    case 'takenOver':
      return row.takenOver ?? '';
    case 'leftOut':
      return row.leftOutAs.flatMap((name) => leftOut[name] ?? []).map(reasonOf)[0] ?? '';
    case 'reading':
    case 'thickness':
    case 'within':
      return valueColumn(row) === column ? valueCell(row, COLUMNS[column].unit) : '';
    default:
      return lengthCell(row[column], COLUMNS[column].unit);
  }
}

/** Where none was given the cell says so: an empty one would make the reading count. */
function reasonOf({ why }: { readonly why: string }): string {
  return why.trim() === '' ? 'no reason given' : why;
}

function valueColumn({ kind }: ReadingRow): Column {
  if (kind === 'micrometer') return 'thickness';
  return kind === 'assumed parallel' ? 'within' : 'reading';
}

/** In a table plus is the plunger pushed in, whatever plus on the dial was. */
function valueCell({ value, turned }: ReadingRow, unit: LengthUnit): Cell {
  const cell = lengthCell(value, unit);
  return turned && typeof cell === 'number' && cell !== 0 ? -cell : cell;
}

/** A tenth of a nanometre, and beyond what anybody types. */
const DECIMALS = 7;

/** The number in `unit`; what cannot be read as one stays as it was typed. */
function lengthCell(typed: TypedLength | undefined, unit: LengthUnit): Cell {
  if (typed === undefined || isBlank(typed)) return '';
  const read = readTyped(typed);
  if (read.kind !== 'length') return typed.text;
  return Number(fromMicrometres(read.length, unit).toFixed(DECIMALS));
}
