import { groupedBy } from '../../core/grouped-by';
import { AXES, type Face, oppositeFace, outwardNormal } from '../../core/part/faces';
import type { NewId } from '../../entry/new-id';
import type { SetupEntry } from '../../entry/setup-entry';
import { blank, type TypedLength } from '../../entry/typed-length';
import { FileRefused } from '../file-refused';
import type { Column, Matched } from './columns';
import type { CsvRow } from './read-csv';
import { cellsUnder, type Row, readRow } from './read-row';

/** What a table of readings comes to. */
export interface ReadingsRead {
  readonly setups: readonly SetupEntry[];
  /** Why readings are left out of the reckoning, by their id. */
  readonly leftOut: ReadonlyMap<string, string>;
  readonly count: number;
  readonly problems: readonly { readonly line: number; readonly message: string }[];
}

/** Fields that a column may have: each of its heights at each of its placings. */
const MOST_FIELDS = 5000;

/** A setup with its readings in the order of their rows. */
interface SetupRead {
  readonly setup: SetupEntry;
  readonly ids: readonly string[];
}

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
  const cellsOf = cellsUnder(columns);
  const good: Row[] = [];
  for (const row of rows) {
    const read = row.problem ?? readRow(cellsOf(row));
    if (typeof read === 'string') {
      problems.push({ line: row.line, message: read });
    } else good.push(read);
  }
  const read = [...groupedBy(good, groupOf).values()].map((rows) => ({
    rows,
    ...setupOf(rows, newId),
  }));
  const setups = read.map(({ setup }) => setup);
  const leftOut = new Map(read.flatMap(leftOutIn));
  return { setups, leftOut, count: rows.length - problems.length, problems };
}

/** A word that is said in several rows counts as long as one of them does. */
function leftOutIn({
  rows,
  ids,
}: {
  readonly rows: readonly Row[];
  readonly ids: readonly string[];
}) {
  const counts = new Set(ids.filter((_, index) => rows[index]?.leftOut === ''));
  const all = ids.map((id, index) => [id, rows[index]?.leftOut ?? ''] as const);
  return all.filter(([id]) => !counts.has(id));
}

/** Rows of one setup have the same heights of nose and indicator, and are of one pair of faces or of one section. */
function groupOf({ way, face, base, setup, lengths }: Row): string {
  const isNose = way === 'nose comparator';
  const heights = isNose ? [lengths.noseHeight?.text, lengths.height?.text] : [];
  const said = way === 'assumed parallel' ? lengths.within?.text : '';
  // Turned on four sides, a block stands on any of them.
  const isTurned = (isNose || way === 'column') && setup !== '';
  const pair = isTurned ? sectionOf(face, base) : [face, oppositeFace(face)].sort().join();
  const stand = (isNose || way === 'column') && !isTurned ? base : '';
  return JSON.stringify([way, setup, pair, stand, heights, said]);
}

/** The section that a face and its base are corners of, by the axis that stands across it. */
function sectionOf(face: Face, base: Face): string {
  const axes = [face, base].map((one) => outwardNormal(one).axis);
  return AXES.find((axis) => !axes.includes(axis)) ?? '';
}

function setupOf(rows: readonly Row[], newId: NewId): SetupRead {
  const [{ way, face, base, lengths }] = rows as readonly [Row];
  const id = newId();
  const ids = rows.map(() => newId());
  const faces = [face, oppositeFace(face)] as const;
  switch (way) {
    case 'nose comparator':
      return {
        ids,
        setup: {
          ...{ kind: way, id, faces, base },
          noseHeight: lengths.noseHeight ?? blank('mm'),
          indicatorHeight: lengths.height ?? blank('mm'),
          placings: rows.map((row, index) => ({
            ...{ id: ids[index] ?? '', face: row.face, reading: length(row, 'reading') },
            ...(row.base !== base && { base: row.base }),
          })),
        },
      };
    case 'column':
      return columnOf(rows, { id, faces, base }, newId);
    case 'micrometer':
      return {
        ids,
        setup: {
          ...{ kind: way, id, faces },
          places: rows.map((row, index) => ({
            ...{ ...placeOf(row, ids[index]), thickness: length(row, 'thickness') },
            ...(row.takenOver !== undefined && { takenOver: row.takenOver }),
          })),
        },
      };
    case 'over the top':
    case 'face map':
      return {
        ids,
        setup: {
          ...{ kind: way, id, faces },
          places: rows.map((row, index) => {
            return { ...placeOf(row, ids[index]), reading: length(row, 'reading') };
          }),
        },
      };
    case 'assumed parallel': {
      const within = lengths.within ?? blank('µm');
      return { ids: rows.map(() => id), setup: { kind: way, id, faces, within } };
    }
  }
}

function length({ lengths }: Row, column: Column): TypedLength {
  return lengths[column] ?? blank('mm');
}

function placeOf(row: Row, id = '') {
  return { id, up: length(row, 'up'), across: length(row, 'across') };
}

/** A column has the same heights at every placing: what one lacks is still to be read. */
function columnOf(
  rows: readonly Row[],
  base: { readonly id: string; readonly faces: readonly [Face, Face]; readonly base: Face },
  newId: NewId,
): SetupRead {
  const typed = new Map(rows.map(({ lengths }) => [lengths.height?.text ?? '', lengths.height]));
  const heights = [...typed.values()].map((height) => ({
    id: newId(),
    height: height ?? blank('mm'),
  }));
  const groups = [...placingsOf(rows).values()];
  if (heights.length * groups.length > MOST_FIELDS) {
    throw new FileRefused(
      `A column in it has ${heights.length} heights at ${groups.length} placings: more than can be shown`,
    );
  }
  const ids = new Map<Row, string>();
  const placings = groups.map((group) => {
    const id = newId();
    const readings = heights.map(({ id: heightId, height }) => {
      const row = group.find(({ lengths }) => lengths.height?.text === height.text);
      if (row !== undefined) ids.set(row, `${id} ${heightId}`);
      return [heightId, row?.lengths.reading ?? blank('µm')];
    });
    // There is no placing without a row.
    const { face, base: stand } = group[0] as Row;
    const standsOn = stand !== base.base && { base: stand };
    return { id, face, ...standsOn, readings: Object.fromEntries(readings) };
  });
  return {
    ids: rows.map((row) => ids.get(row) ?? ''),
    setup: { kind: 'column', ...base, heights, placings },
  };
}

/** The rows of each placing. A height that is read once more is of another placing: none is lost. */
function placingsOf(rows: readonly Row[]): ReadonlyMap<string, readonly Row[]> {
  const times = new Map<string, number>();
  return groupedBy(rows, ({ placing, face, base, lengths }) => {
    const sameHeight = JSON.stringify([placing, face, base, lengths.height?.text]);
    const time = times.get(sameHeight) ?? 0;
    times.set(sameHeight, time + 1);
    return JSON.stringify([placing, face, base, time]);
  });
}
