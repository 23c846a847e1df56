import Papa from 'papaparse';
import { FileRefused } from '../file-refused';
import { armed } from './formulas';

/** A row of a table and the line of the file that it begins on. */
export interface CsvRow {
  readonly line: number;
  readonly cells: readonly string[];
  /** What is wrong with the row as CSV. */
  readonly problem?: string;
}

/** What a table of readings may have, and a cell of it: no reading and no name is as long. */
const MOST = { characters: 2_000_000, rows: 5000, columns: 200, cell: 1000 } as const;

export const TABLE_TOO_LONG =
  'It has more rows than are taken at once, 5000: keep those of one inspection. A whole shop moves with a backup';

/**
 * Reads CSV: commas, semicolons or tabs, whichever the headings have, as a spreadsheet saves or copies it.
 *
 * @throws FileRefused where it is longer or wider than any table of readings.
 */
export function readCsv(text: string): readonly CsvRow[] {
  if (text.length > MOST.characters) throw new FileRefused(TABLE_TOO_LONG);
  const plain = text.replace(/^\uFEFF/, '');
  const rows: CsvRow[] = [];
  let [line, from] = [1, 0];
  let isTooWide = false;
  Papa.parse<string[]>(plain, {
    delimiter: delimiterOf(plain),
    step: ({ data, errors, meta }, parser) => {
      isTooWide ||= data.length > MOST.columns;
      if (isTooWide || rows.length > MOST.rows) return parser.abort();
      const cells = data.map((cell) => armed(cell.slice(0, MOST.cell)));
      const problem = problemOf(data, errors);
      if (cells.some((cell) => cell.trim() !== '')) {
        rows.push({ line, cells, ...(problem && { problem }) });
      }
      line += plain.slice(from, meta.cursor).split(/\r\n|\r|\n/).length - 1;
      from = meta.cursor;
    },
  });
  if (isTooWide) throw new FileRefused('It has more columns than any table of readings');
  if (rows.length > MOST.rows) throw new FileRefused(TABLE_TOO_LONG);
  return rows;
}

const DELIMITERS = [',', ';', '\t'] as const;

/** What stands between the headings: what the cells below hold is free. */
function delimiterOf(text: string): string {
  const [headings = ''] = /[^\r\n]+/.exec(text.slice(0, MOST.columns * MOST.cell)) ?? [];
  const plain = headings.replace(/"[^"]*"/g, '');
  const times = (mark: string) => plain.split(mark).length;
  return DELIMITERS.reduce((best, mark) => (times(mark) > times(best) ? mark : best));
}

function problemOf(
  cells: readonly string[],
  errors: readonly Papa.ParseError[],
): string | undefined {
  if (errors.some(({ type }) => type === 'Quotes')) return 'The quotes do not match';
  return cells.some(({ length }) => length > MOST.cell)
    ? `A cell in it has more than ${MOST.cell} characters`
    : undefined;
}
