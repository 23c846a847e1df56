import { areNeighbours, FACES, type Face, oppositeFace } from '../../core/part/faces';
import { readLengthText } from '../../entry/length-text';
import type { NewId } from '../../entry/new-id';
import type { SetupEntry, SetupKind } from '../../entry/setup-entry';
import { blank, type TypedLength } from '../../entry/typed-length';
import { FileRefused } from '../file-refused';
import { COLUMNS, type Column, type Matched } from './columns';
import type { CsvRow } from './read-csv';

/** A row that was read as a reading. */
interface Row {
  readonly way: SetupKind;
  readonly face: Face;
  readonly base: Face;
  readonly setup: string;
  readonly placing: string;
  readonly lengths: Readonly<Partial<Record<Column, TypedLength>>>;
}

/** What a table of readings comes to. */
export interface ReadingsRead {
  readonly setups: readonly SetupEntry[];
  readonly count: number;
  readonly problems: readonly { readonly line: number; readonly message: string }[];
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

/** Fields that a column may have: each of its heights at each of its placings. */
const MOST_FIELDS = 5000;

/**
 * Reads the rows below the headings; a row that cannot be read is named by its line, and left out.
 *
 * @throws FileRefused where a column has more heights and placings than any.
 */
export function readReadings(
  rows: readonly CsvRow[],
  columns: readonly (Matched | undefined)[],
  newId: NewId,
): ReadingsRead {
  const problems: { line: number; message: string }[] = [];
  const good = rows.flatMap((row) => {
    const read = row.problem ?? readRow(row, columns);
    if (typeof read !== 'string') return [read];
    problems.push({ line: row.line, message: read });
    return [];
  });
  const groups = new Map<string, Row[]>();
  for (const row of good) {
    const key = groupOf(row);
    groups.set(key, [...(groups.get(key) ?? []), row]);
  }
  const setups = [...groups.values()].map((group) => setupOf(group, newId));
  return { setups, count: good.length, problems };
}

/** The row, or what is wrong with it. */
function readRow({ cells }: CsvRow, columns: readonly (Matched | undefined)[]): Row | string {
  const at = (column: Column) => {
    const index = columns.findIndex((one) => one?.column === column);
    return { text: (cells[index] ?? '').trim(), unit: columns[index]?.unit ?? 'mm' };
  };
  const given = (column: Column) => at(column).text !== '';
  const way = at('way').text.toLowerCase() || usualWay(given);
  if (!isWay(way)) return `‘${way}’ is no way of reading: ${WAYS.join(', ')}`;
  const face = at('face').text.toLowerCase();
  if (!isFace(face)) return `‘${face}’ is no face: ${FACES.join(', ')}`;
  const base = at('base').text.toLowerCase() || usualBase(face);
  if (!isFace(base)) return `‘${base}’ is no face to stand on: ${FACES.join(', ')}`;
  const standsOn = way === 'nose comparator' || way === 'column';
  if (standsOn && !areNeighbours(face, base))
    return `The ${face} does not stand up from the ${base}`;
  const missing = NEEDED[way].find((column) => !given(column));
  if (missing !== undefined) return `Nothing stands under ‘${COLUMNS[missing].heading}’`;
  const lengths: Partial<Record<Column, TypedLength>> = {};
  for (const column of LENGTHS) {
    if (!given(column)) continue;
    const { text, unit } = at(column);
    const read = readLengthText(text, unit);
    if (read.kind !== 'length')
      return `‘${text}’ under ‘${COLUMNS[column].heading}’: ${read.message}`;
    lengths[column] = { text, unit };
  }
  return { way, face, base, setup: at('setup').text, placing: at('placing').text, lengths };
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

/** Rows of one setup have the same heights of nose and indicator, and are of one pair of faces. */
function groupOf({ way, face, base, setup, lengths }: Row): string {
  const isNose = way === 'nose comparator';
  const heights = isNose ? [lengths.noseHeight?.text, lengths.height?.text] : [];
  const said = way === 'assumed parallel' ? lengths.within?.text : '';
  // Turned on four sides, a setting stands on any of them.
  const pair = isNose && setup !== '' ? '' : [face, oppositeFace(face)].sort().join();
  const stand = way === 'column' || (isNose && setup === '') ? base : '';
  return JSON.stringify([way, setup, pair, stand, heights, said]);
}

function setupOf(rows: readonly Row[], newId: NewId): SetupEntry {
  const [{ way, face, base, lengths }] = rows as readonly [Row];
  const id = newId();
  const faces = [face, oppositeFace(face)] as const;
  const length = (row: Row, column: Column) => row.lengths[column] ?? blank('mm');
  switch (way) {
    case 'nose comparator':
      return {
        ...{ kind: way, id, faces, base },
        noseHeight: lengths.noseHeight ?? blank('mm'),
        indicatorHeight: lengths.height ?? blank('mm'),
        placings: rows.map((row) => ({
          ...{ id: newId(), face: row.face, reading: length(row, 'reading') },
          ...(row.base !== base && { base: row.base }),
        })),
      };
    case 'column':
      return columnOf(rows, { id, faces, base }, newId);
    case 'micrometer':
      return {
        ...{ kind: way, id, faces },
        places: rows.map((row) => ({
          ...{ id: newId(), up: length(row, 'up'), across: length(row, 'across') },
          thickness: length(row, 'thickness'),
        })),
      };
    case 'over the top':
    case 'face map':
      return {
        ...{ kind: way, id, faces },
        places: rows.map((row) => ({
          ...{ id: newId(), up: length(row, 'up'), across: length(row, 'across') },
          reading: length(row, 'reading'),
        })),
      };
    case 'assumed parallel':
      return { kind: way, id, faces, within: lengths.within ?? blank('µm') };
  }
}

/** A column has the same heights at every placing: what one lacks is still to be read. */
function columnOf(
  rows: readonly Row[],
  base: { readonly id: string; readonly faces: readonly [Face, Face]; readonly base: Face },
  newId: NewId,
): SetupEntry {
  const typed = new Map(rows.map(({ lengths }) => [lengths.height?.text ?? '', lengths.height]));
  const heights = [...typed.values()].map((height) => ({
    id: newId(),
    height: height ?? blank('mm'),
  }));
  const placings = placingsOf(rows);
  if (heights.length * placings.size > MOST_FIELDS) {
    throw new FileRefused(
      `A column in it has ${heights.length} heights at ${placings.size} placings: more than can be shown`,
    );
  }
  return {
    ...{ kind: 'column', ...base, heights },
    placings: [...placings.values()].map((group) => ({
      id: newId(),
      face: group[0]?.face ?? base.faces[0],
      readings: Object.fromEntries(
        heights.map(({ id, height }) => {
          const row = group.find(({ lengths }) => lengths.height?.text === height.text);
          return [id, row?.lengths.reading ?? blank('µm')];
        }),
      ),
    })),
  };
}

/** The rows of each placing. A height that is read once more is of another placing: none is lost. */
function placingsOf(rows: readonly Row[]): ReadonlyMap<string, readonly Row[]> {
  const placings = new Map<string, Row[]>();
  const times = new Map<string, number>();
  for (const row of rows) {
    const { placing, face, lengths } = row;
    const sameHeight = JSON.stringify([placing, face, lengths.height?.text]);
    const time = times.get(sameHeight) ?? 0;
    times.set(sameHeight, time + 1);
    const key = JSON.stringify([placing, face, time]);
    placings.set(key, [...(placings.get(key) ?? []), row]);
  }
  return placings;
}
