import Papa from 'papaparse';
import { disarmed } from './formulas';

/** A cell: numbers stay numbers, text is never run. */
export type Cell = string | number;

/** Tells spreadsheets that the file is UTF-8, so that µ stays µ. */
const MARK = '\uFEFF';

/**
 * A table as CSV (RFC 4180): commas, a decimal point, quotes where they are needed, and a first line
 * of headings. What a spreadsheet would take for a formula is disarmed; numbers stay numbers.
 */
export function writeCsv(headings: readonly string[], rows: readonly (readonly Cell[])[]): string {
  return `${csvHead(headings)}${csvLines(rows)}`;
}

/** The beginning of a table: its headings. */
export function csvHead(headings: readonly string[]): string {
  return `${MARK}${csvLines([headings])}`;
}

/** What follows it: any number of rows, so that a long table is written in pieces. */
export function csvLines(rows: readonly (readonly Cell[])[]): string {
  if (rows.length === 0) return '';
  const table = rows.map((row) =>
    row.map((cell) => (typeof cell === 'string' ? disarmed(cell) : cell)),
  );
  return `${Papa.unparse(table, { newline: '\r\n' })}\r\n`;
}
