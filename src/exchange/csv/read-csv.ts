import Papa from 'papaparse';
import { FileRefused } from '../file-refused';
import { disarmed } from './write-csv';

/** A row of a table and the line of the file that it begins on. */
export interface CsvRow {
  readonly line: number;
  readonly cells: readonly string[];
  /** What is wrong with the row as CSV. */
  readonly problem?: string;
}

const MOST = { characters: 2_000_000, rows: 5000 } as const;

const TOO_LONG =
  'It has more rows than are taken at once, 5000: keep those of one inspection. A whole shop moves with a backup';

/**
 * Reads CSV: commas, semicolons or tabs, whichever the file has, as a spreadsheet saves or copies it.
 *
 * @throws FileRefused where it is longer than any table of readings.
 */
export function readCsv(text: string): readonly CsvRow[] {
  if (text.length > MOST.characters) throw new FileRefused(TOO_LONG);
  const plain = text.replace(/^\uFEFF/, '');
  const rows: CsvRow[] = [];
  let [line, from] = [1, 0];
  Papa.parse<string[]>(plain, {
    delimitersToGuess: [',', ';', '\t'],
    step: ({ data, errors, meta }) => {
      const [error] = errors.filter(({ type }) => type === 'Quotes');
      const cells = data.map(disarmed);
      if (cells.some((cell) => cell.trim() !== '')) {
        rows.push({ line, cells, ...(error && { problem: 'The quotes do not match' }) });
      }
      line += plain.slice(from, meta.cursor).split(/\r\n|\r|\n/).length - 1;
      from = meta.cursor;
    },
  });
  if (rows.length > MOST.rows) throw new FileRefused(TOO_LONG);
  return rows;
}
