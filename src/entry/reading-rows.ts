import type { Face } from '../core/part/faces';
import { sitReading } from '../core/readings/unknowns';
import { baseOf } from './four-sides';
import { isTurned } from './read-with';
import { readingNames } from './reading-names';
import type { SetupEntry, SetupKind } from './setup-entry';
import type { TypedLength } from './typed-length';

/** One reading as it was entered, with all that it was set up with. */
export interface ReadingRow {
  /** Another one for each reading of an inspection. */
  readonly id: string;
  readonly name: string;
  readonly kind: SetupKind;
  /** The setup that it belongs to, counted from 1, and the time that the block was set down in it. */
  readonly setup: number;
  readonly placing: number;
  readonly face: Face;
  /** The face opposite, where the reading is of both. */
  readonly opposite?: Face;
  readonly base?: Face;
  readonly noseHeight?: TypedLength;
  readonly height?: TypedLength;
  readonly up?: TypedLength;
  readonly across?: TypedLength;
  readonly value: TypedLength;
  /** Present where it was taken over from earlier: when it was read, ISO 8601 in UTC. */
  readonly takenOver?: string | undefined;
  /** True where plus on the dial is plunger let out. */
  readonly turned: boolean;
  /** Names under which the reading may have been left out: its own, and that of its placing. */
  readonly leftOutAs: readonly string[];
}

type Row = Omit<ReadingRow, 'kind' | 'setup' | 'name' | 'leftOutAs' | 'turned'> & {
  readonly placingId?: string;
};

/** Every reading of an inspection, in the order that it was entered. */
export function readingRows(setups: readonly SetupEntry[]): readonly ReadingRow[] {
  const names = readingNames(setups);
  return setups.flatMap((setup, index) =>
    rowsOf(setup).map(({ placingId, ...row }) => ({
      ...row,
      kind: setup.kind,
      setup: index + 1,
      turned: isTurned(setup),
      name: names.get(row.id) ?? 'Reading',
      leftOutAs: placingId === undefined ? [row.id] : [row.id, sitReading(placingId)],
    })),
  );
}

function rowsOf(setup: SetupEntry): readonly Row[] {
  const [face, opposite] = setup.faces;
  switch (setup.kind) {
    case 'nose comparator':
      return setup.placings.map((placing, index) => ({
        ...{ id: placing.id, placing: index + 1, face: placing.face, base: baseOf(setup, placing) },
        ...{ noseHeight: setup.noseHeight, height: setup.indicatorHeight, value: placing.reading },
      }));
    case 'column':
      return setup.placings.flatMap((placing, index) =>
        setup.heights.flatMap(({ id, height }): readonly Row[] => {
          const value = placing.readings[id];
          if (value === undefined) return [];
          const at = { placing: index + 1, placingId: placing.id };
          return [
            {
              ...at,
              ...{
                id: `${placing.id} ${id}`,
                face: placing.face,
                base: baseOf(setup, placing),
                height,
                value,
              },
            },
          ];
        }),
      );
    case 'micrometer':
      return setup.places.map(({ id, up, across, thickness, takenOver }) => {
        return { id, placing: 1, face, opposite, up, across, value: thickness, takenOver };
      });
    case 'over the top':
    case 'face map':
      return setup.places.map(({ id, up, across, reading }) => ({
        ...{ id, placing: 1, placingId: setup.id, face, up, across, value: reading },
        ...(setup.kind === 'over the top' && { base: opposite }),
      }));
    case 'assumed parallel':
      return [{ id: setup.id, placing: 1, face, opposite, value: setup.within }];
  }
}
