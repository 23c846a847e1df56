import { signal } from '@preact/signals';
import { lookThrough, type TableContents } from '../exchange/csv/long-table';
import { readCsv } from '../exchange/csv/read-csv';
import { type InspectionInTable, isResults } from '../exchange/csv/table-kind';
import { tableText } from '../exchange/csv/table-text';
import type { PartRecord } from '../store/records';
import { parts } from './shop';
import { turns } from './turns';
import { allWords } from './words-sought';

/** A table that was opened without a part that it belongs to. */
export interface OpenedTable {
  readonly name: string;
  readonly text: string;
  /** None where it holds results: they are worked out from readings, and never taken in. */
  readonly contents: TableContents | undefined;
}

/** Bytes at the beginning of a file that tell whether it is a table. */
const BEGINNING = 20_000;

/**
 * The file as a table; undefined where it is none, and so may be a backup.
 *
 * @throws FileRefused where it is a table that cannot be taken.
 */
export async function openTable(
  file: File,
  progress: (rows: number) => void = () => {},
): Promise<OpenedTable | undefined> {
  const beginning = await tableText(file.slice(0, BEGINNING));
  const [headings] = beginning.split(/\r\n|\r|\n/, 1);
  if (!isText(beginning) || beginning.trimStart().startsWith('{')) return undefined;
  const [head] = readCsv(headings ?? '');
  if (head === undefined || head.cells.length < 2) return undefined;
  // Results are told by their headings, however many there are.
  if (isResults(head)) return { name: file.name, text: '', contents: undefined };
  const text = await tableText(file);
  return { name: file.name, text, contents: await lookThrough(text, turns(), progress) };
}

/** Packed files and pictures hold what no text does. */
function isText(beginning: string): boolean {
  return !/[\0\u{FFFD}]/u.test(beginning.slice(0, -1));
}

/** A table on its way to the part that was chosen for it. */
export const tableForPart = signal<OpenedTable | undefined>(undefined);

/** The table that was chosen for the part that opens; it is handed over once. */
export function takeTableForPart(): OpenedTable | undefined {
  const table = tableForPart.peek();
  tableForPart.value = undefined;
  return table;
}

/** The parts that a table may belong to: those that it names first, then the ones begun last. */
export function partsForTable({ contents }: OpenedTable, words: string): readonly PartRecord[] {
  const named = new Set(contents?.inspections.map(({ part }) => part));
  const isSought = allWords(words);
  const all = [...parts.value.values()].reverse().filter(({ entry, removed }) => {
    return removed === undefined && isSought(`${entry.name}\n${entry.job}`.toLowerCase());
  });
  return firstThose(all, ({ entry }) => named.has(entry.name.trim()));
}

/** The inspections of a table that name all the words: those of the part first. */
export function inspectionsForPart(
  { contents }: OpenedTable,
  { entry }: PartRecord,
  words: string,
): readonly InspectionInTable[] {
  const isSought = allWords(words);
  const all = (contents?.inspections ?? []).filter(({ part, job, taken }) =>
    isSought(`${part}\n${job}\n${taken}`.toLowerCase()),
  );
  return firstThose(all, ({ part }) => part === entry.name.trim());
}

function firstThose<T>(all: readonly T[], isFirst: (one: T) => boolean): readonly T[] {
  return [...all.filter(isFirst), ...all.filter((one) => !isFirst(one))];
}
