import type { Face } from '../core/part/faces';
import { isUpright, placeEdges } from './place-edges';
import { pairWithBase, readingNames } from './reading-names';
import type { SetupEntry } from './setup-entry';
import type { TypedLength } from './typed-length';

/** Something that was typed at the plate, and what it is called. */
export interface TypedRow {
  /** Another one for each row of an inspection. */
  readonly name: string;
  readonly typed: TypedLength;
}

/**
 * Everything that was typed in one inspection, in the order of its sheets: readings, heights and places, which
 * are named as their fields are in a part that stands on `datum`.
 *
 * @param among all that a base is to be told from: those of another inspection too where it stands beside.
 */
export function typedRows(
  setups: readonly SetupEntry[],
  datum: Face,
  among: readonly SetupEntry[] = setups,
): readonly TypedRow[] {
  const names = readingNames(setups, among);
  const rows = setups.flatMap((setup) =>
    rowsOf(setup, { datum, among, nameOf: (id) => names.get(id) ?? 'A reading' }),
  );
  const seen = new Map<string, number>();
  return rows.map(([name, typed]) => {
    const time = (seen.get(name) ?? 0) + 1;
    seen.set(name, time);
    return { name: time === 1 ? name : `${name} (${time})`, typed };
  });
}

type Rows = readonly (readonly [string, TypedLength])[];

interface Naming {
  readonly datum: Face;
  readonly among: readonly SetupEntry[];
  readonly nameOf: (id: string) => string;
}

function rowsOf(setup: SetupEntry, { datum, among, nameOf }: Naming): Rows {
  switch (setup.kind) {
    case 'nose comparator': {
      const pair = pairWithBase(setup, among);
      return [
        [`Nose height, ${pair}`, setup.noseHeight],
        [`Indicator height, ${pair}`, setup.indicatorHeight],
        ...setup.placings.map(({ id, reading }) => [nameOf(id), reading] as const),
      ];
    }
    case 'column':
      return setup.placings.flatMap((placing) =>
        setup.heights.flatMap(({ id }): Rows => {
          const typed = placing.readings[id];
          return typed === undefined ? [] : [[nameOf(`${placing.id} ${id}`), typed]];
        }),
      );
    case 'micrometer':
      return setup.places.flatMap(({ id, thickness, ...place }) =>
        withPlace(setup.faces[0], datum, [nameOf(id), thickness], place),
      );
    case 'over the top':
    case 'face map':
      return setup.places.flatMap(({ id, reading, ...place }) =>
        withPlace(setup.faces[0], datum, [nameOf(id), reading], place),
      );
    case 'assumed parallel':
      return [[nameOf(setup.id), setup.within]];
  }
}

function withPlace(
  face: Face,
  datum: Face,
  read: readonly [string, TypedLength],
  { up, across }: { readonly up: TypedLength; readonly across: TypedLength },
): Rows {
  const [name] = read;
  const edges = placeEdges(face, datum);
  return [
    read,
    [`${name}: ${isUpright(face, datum) ? 'up' : 'in'} from ${edges.up}`, up],
    [`${name}: in from ${edges.across}`, across],
  ];
}
