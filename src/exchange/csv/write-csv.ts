import Papa from 'papaparse';

/** A cell: numbers stay numbers, text is never run. */
export type Cell = string | number;

/** What a spreadsheet would take for a formula, or what leads up to one. */
const FORMULA = /^[=+\-@\t\r\n]/;

/** Tells spreadsheets that the file is UTF-8, so that µ stays µ. */
const MARK = '\uFEFF';

/**
 * A table as CSV (RFC 4180): commas, a decimal point, quotes where they are needed, and a first line
 * of headings. A text that begins as a formula does gets an apostrophe in front, so that a
 * spreadsheet shows it and does not run it.
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
  const table = rows.map((row) => [...row]);
  return `${Papa.unparse(table, { escapeFormulae: FORMULA, newline: '\r\n' })}\r\n`;
}

/** The text of a cell as it was before `writeCsv` made it harmless. */
export function disarmed(text: string): string {
  return text.startsWith("'") && FORMULA.test(text.slice(1)) ? text.slice(1) : text;
}
