import type { Face } from '../core/part/faces';
import { fieldKey } from './field-keys';
import type { SetupEntry } from './setup-entry';
import { isBlank, readTyped, type TypedLength } from './typed-length';

/** What was read before at the same point. */
export interface ReadingBefore {
  readonly typed: TypedLength;
  /** The seating before in this inspection, or the inspection before it. */
  readonly when: 'seating before' | 'last time';
  /** Present where that had been taken over itself: when it was read, ISO 8601 in UTC. */
  readonly takenOver?: string;
}

/** What was read before, by the key of the field that it stands beside. */
export type ReadingsBefore = ReadonlyMap<string, ReadingBefore>;

/**
 * Finds what was read before at the point of each reading: by the seating before of the same point,
 * or else by the last one of the inspection before, of which `last` are the setups.
 */
export function readingsBefore(
  setups: readonly SetupEntry[],
  last: readonly SetupEntry[],
): ReadingsBefore {
  const latest = new Map<string, ReadingBefore>();
  for (const { point, typed, takenOver } of last.flatMap(pointsIn)) {
    if (isBlank(typed)) continue;
    latest.set(point, { typed, when: 'last time', ...(takenOver && { takenOver }) });
  }
  const found = new Map<string, ReadingBefore>();
  for (const { field, point, typed } of setups.flatMap(pointsIn)) {
    const before = latest.get(point);
    if (before !== undefined) found.set(field, before);
    if (!isBlank(typed)) latest.set(point, { typed, when: 'seating before' });
  }
  return found;
}

/** A reading with its field, and the point that it is of: alike in every inspection. */
interface Point {
  readonly field: string;
  readonly point: string;
  readonly typed: TypedLength;
  readonly takenOver?: string | undefined;
}

function pointsIn(setup: SetupEntry): readonly Point[] {
  const { kind } = setup;
  switch (kind) {
    case 'nose comparator':
      return setup.placings.map(({ id, face, base, reading }) => {
        const heights = [setup.noseHeight, setup.indicatorHeight];
        const point = pointOf(kind, face, base ?? setup.base, heights);
        return { field: fieldKey.placing(id), point, typed: reading };
      });
    case 'column':
      return setup.placings.flatMap(({ id, face, base, readings }) =>
        setup.heights.flatMap((row) => {
          const typed = readings[row.id];
          if (typed === undefined) return [];
          const point = pointOf(kind, face, base ?? setup.base, [row.height]);
          return [{ field: fieldKey.traverse(id, row.id), point, typed }];
        }),
      );
    case 'micrometer':
      return setup.places.filter(isPlaced).map(({ id, up, across, thickness, takenOver }) => {
        const point = pointOf(kind, ...setup.faces, [up, across]);
        return { field: fieldKey.thickness(id), point, typed: thickness, takenOver };
      });
    case 'over the top':
    case 'face map':
      return setup.places.filter(isPlaced).map(({ id, up, across, reading }) => {
        const point = pointOf(kind, ...setup.faces, [up, across]);
        return { field: fieldKey.placing(id), point, typed: reading };
      });
    case 'assumed parallel':
      return [];
  }
}

/** Two of which nobody has said where they are need not be one. */
function isPlaced({ up }: { readonly up: TypedLength }): boolean {
  return !isBlank(up);
}

function pointOf(kind: string, face: Face, other: Face, where: readonly TypedLength[]): string {
  return [kind, face, other, ...where.map(wholeMicrometres)].join(' · ');
}

/** A height is the same in whatever way it is typed. */
function wholeMicrometres(typed: TypedLength): string {
  const read = readTyped(typed);
  return read.kind === 'length' ? read.length.toFixed(0) : typed.text.trim();
}
