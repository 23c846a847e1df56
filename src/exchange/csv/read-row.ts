import { areNeighbours, FACES, type Face } from '../../core/part/faces';
import { readLengthText } from '../../entry/length-text';
import type { SetupKind } from '../../entry/setup-entry';
import type { TypedLength } from '../../entry/typed-length';
import { COLUMNS, type Column, type Matched } from './columns';
import type { CsvRow } from './read-csv';

/** A row that was read as a reading. */
export interface Row {
  readonly way: SetupKind;
  readonly face: Face;
  readonly base: Face;
  readonly setup: string;
  readonly placing: string;
  readonly lengths: Readonly<Partial<Record<Column, TypedLength>>>;
  /** When it was read, where it was taken over from earlier: ISO 8601 in UTC. */
  readonly takenOver?: string;
  /** Why it is left out of the reckoning; empty where it counts. */
  readonly leftOut: string;
}

const WAYS: readonly SetupKind[] = [
  'nose comparator',
  'column',
  'micrometer',
  'over the top',
  'face map',
  'assumed parallel',
];

/** The columns that a way of reading cannot do without. */
const NEEDED: Readonly<Record<SetupKind, readonly Column[]>> = {
  'nose comparator': ['noseHeight', 'height', 'reading'],
  column: ['height', 'reading'],
  micrometer: ['up', 'thickness'],
  'over the top': ['up', 'reading'],
  'face map': ['up', 'reading'],
  'assumed parallel': ['within'],
};

/** Which cell stands under which column, and the unit of its numbers. */
export type Cells = (column: Column) => {
  readonly text: string;
  readonly unit: TypedLength['unit'];
};

/** Tells what stands in a row, by what its columns mean. */
export function cellsUnder(columns: readonly (Matched | undefined)[]): (row: CsvRow) => Cells {
  const places = new Map<Column, number>();
  columns.forEach((matched, index) => {
    if (matched !== undefined && !places.has(matched.column)) places.set(matched.column, index);
  });
  return ({ cells }) =>
    (column) => {
      const index = places.get(column) ?? -1;
      return { text: (cells[index] ?? '').trim(), unit: columns[index]?.unit ?? 'mm' };
    };
}

/** The row, or what is wrong with it. */
export function readRow(at: Cells): Row | string {
  const given = (column: Column) => at(column).text !== '';
  const way = at('way').text.toLowerCase() || usualWay(given);
  if (!isWay(way)) return `‘${way}’ is no way of reading: ${WAYS.join(', ')}`;
  const face = at('face').text.toLowerCase();
  if (face === '') return nothingUnder('face');
  if (!isFace(face)) return `‘${face}’ is no face: ${FACES.join(', ')}`;
  const base = at('base').text.toLowerCase() || usualBase(face);
  if (!isFace(base)) return `‘${base}’ is no face to stand on: ${FACES.join(', ')}`;
  const standsOn = way === 'nose comparator' || way === 'column';
  if (standsOn && !areNeighbours(face, base))
    return `The ${face} does not stand up from the ${base}`;
  const missing = NEEDED[way].find((column) => !given(column));
  if (missing !== undefined) return nothingUnder(missing);
  const lengths: Partial<Record<Column, TypedLength>> = {};
  for (const column of LENGTHS) {
    if (!given(column)) continue;
    const { text, unit } = at(column);
    const read = readLengthText(text, unit);
    if (read.kind !== 'length')
      return `‘${text}’ under ‘${COLUMNS[column].heading}’: ${read.message}`;
    lengths[column] = { text, unit };
  }
  const takenOver = at('takenOver').text;
  if (takenOver !== '' && momentOf(takenOver) === undefined)
    return `‘${takenOver}’ under ‘${COLUMNS.takenOver.heading}’ is no time`;
  return {
    ...{ way, face, base, setup: at('setup').text, placing: at('placing').text, lengths },
    ...(takenOver !== '' && { takenOver: momentOf(takenOver) ?? '' }),
    leftOut: at('leftOut').text,
  };
}

function nothingUnder(column: Column): string {
  return `Nothing stands under ‘${COLUMNS[column].heading}’`;
}

/** A time as records have it; undefined where the text is none of this age. */
function momentOf(text: string): string | undefined {
  const time = new Date(text);
  const year = time.getUTCFullYear();
  return year >= 1970 && year < 2200 ? time.toISOString() : undefined;
}

const LENGTHS: readonly Column[] = [
  'noseHeight',
  'height',
  'up',
  'across',
  'reading',
  'thickness',
  'within',
];

function usualWay(given: (column: Column) => boolean): SetupKind {
  if (given('thickness')) return 'micrometer';
  if (given('within')) return 'assumed parallel';
  if (given('noseHeight')) return 'nose comparator';
  return given('height') ? 'column' : 'over the top';
}

function usualBase(face: Face): Face {
  return areNeighbours(face, 'bottom') ? 'bottom' : 'left';
}

function isWay(text: string): text is SetupKind {
  return (WAYS as readonly string[]).includes(text);
}

function isFace(text: string): text is Face {
  return (FACES as readonly string[]).includes(text);
}
