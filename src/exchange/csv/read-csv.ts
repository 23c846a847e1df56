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
const MOST = { characters: 64_000_000, rows: 500_000, columns: 200, cell: 1000 } as const;

export const TABLE_TOO_LONG =
  'It has more rows than are taken at once, 500000, or is larger than 64 MB: take it in pieces. A whole shop moves with a backup';

/** Characters that are read between two turns of the screen: a few ms on a phone. */
const PIECE = 30_000;

/** Given rows in the order that they stand in. */
export type TakeRows = (rows: readonly CsvRow[]) => void;

/**
 * Reads CSV: commas, semicolons or tabs, whichever the headings have, as a spreadsheet saves or copies it.
 *
 * @throws FileRefused where it is longer or wider than any table of readings.
 */
export function readCsv(text: string): readonly CsvRow[] {
  const rows: CsvRow[] = [];
  const reader = new Reader(text, (some) => rows.push(...some));
  Papa.parse<string[]>(reader.plain, {
    ...{ delimiter: reader.delimiter, chunkSize: PIECE },
    chunk: (results: Papa.ParseResult<string[]>) => reader.take(results),
    complete: () => {},
  });
  return rows;
}

/** The same of a long text, with a `turn` for the screen after every few rows. */
export function readCsvInTurns(
  text: string,
  take: TakeRows,
  turn: () => Promise<void>,
): Promise<void> {
  const reader = new Reader(text, take);
  return new Promise((resolve, reject) => {
    Papa.parse<string[]>(reader.plain, {
      ...{ delimiter: reader.delimiter, chunkSize: PIECE },
      chunk: (results: Papa.ParseResult<string[]>, parser: Papa.Parser) => {
        parser.pause();
        const goOn = async () => {
          reader.take(results);
          await turn();
          parser.resume();
        };
        goOn().catch((error: unknown) => {
          reject(error);
          parser.abort();
        });
      },
      complete: () => resolve(),
    });
  });
}

/** Makes rows of what the parser gives, and counts their lines. */
class Reader {
  readonly plain: string;
  readonly delimiter: string;
  readonly #take: TakeRows;
  #line = 1;
  #rows = 0;
  #pieces = 0;

  constructor(text: string, take: TakeRows) {
    if (text.length > MOST.characters) throw new FileRefused(TABLE_TOO_LONG);
    this.plain = text.replace(/^\uFEFF/, '');
    this.delimiter = delimiterOf(this.plain);
    this.#take = take;
  }

  take({ data, errors, meta }: Papa.ParseResult<string[]>): void {
    this.#pieces += 1;
    // Quotes that never end make one row of all that follows.
    if (this.#pieces * PIECE - meta.cursor > MOST.columns * MOST.cell) {
      throw new FileRefused(
        `The row on line ${this.#line} is longer than any, or its quotes do not end`,
      );
    }
    const unmatched = new Set(errors.flatMap(({ type, row }) => (type === 'Quotes' ? row : [])));
    const rows = data.flatMap((cells, index) => this.#rowOf(cells, unmatched.has(index)));
    this.#rows += rows.length;
    if (this.#rows > MOST.rows) throw new FileRefused(TABLE_TOO_LONG);
    this.#take(rows);
  }

  #rowOf(data: readonly string[], hasUnmatched: boolean): readonly CsvRow[] {
    if (data.length > MOST.columns) {
      throw new FileRefused('It has more columns than any table of readings');
    }
    const line = this.#line;
    this.#line += 1 + data.reduce((sum, cell) => sum + linesIn(cell), 0);
    const cells = data.map((cell) => armed(cell.slice(0, MOST.cell)));
    if (cells.every((cell) => cell.trim() === '')) return [];
    const problem = problemOf(data, hasUnmatched);
    return [{ line, cells, ...(problem && { problem }) }];
  }
}

function linesIn(cell: string): number {
  return /[\r\n]/.test(cell) ? cell.split(/\r\n|\r|\n/).length - 1 : 0;
}

const DELIMITERS = [',', ';', '\t'] as const;

/** What stands between the headings: what the cells below hold is free. */
function delimiterOf(text: string): string {
  const [headings = ''] = /[^\r\n]+/.exec(text.slice(0, MOST.columns * MOST.cell)) ?? [];
  const plain = headings.replace(/"[^"]*"/g, '');
  const times = (mark: string) => plain.split(mark).length;
  return DELIMITERS.reduce((best, mark) => (times(mark) > times(best) ? mark : best));
}

function problemOf(cells: readonly string[], hasUnmatched: boolean): string | undefined {
  if (hasUnmatched) return 'The quotes do not match';
  return cells.some(({ length }) => length > MOST.cell)
    ? `A cell in it has more than ${MOST.cell} characters`
    : undefined;
}
