import { alongFromBase, type Block, cornersOf, depthBehind, type Triple } from '../part/block';
import { areOpposite, type Face, oppositeFace, outwardNormal } from '../part/faces';
import type { Requirement } from '../part/requirement';
import type { ColumnReading, NoseComparatorReading, Reading } from '../readings/reading';

/** A further piece of measuring that could fix what the readings do not. */
export type Remedy =
  | { readonly kind: 'swing to the other side'; readonly setting: string; readonly face: Face }
  | { readonly kind: 'traverse the other side'; readonly column: string; readonly face: Face }
  | {
      readonly kind: 'compare both sides';
      readonly faces: readonly [Face, Face];
      readonly base: Face;
    }
  | { readonly kind: 'micrometer at two heights'; readonly face: Face; readonly base: Face }
  | {
      readonly kind: 'micrometer at a corner';
      readonly face: Face;
      readonly towards: readonly [Face, Face];
    }
  | {
      readonly kind: 'turn on all four sides';
      readonly setting?: string;
      readonly faces: FourFaces;
    }
  | { readonly kind: 'seat again and read'; readonly setting: string; readonly face: Face }
  | { readonly kind: 'assume parallel'; readonly face: Face };

/** The four faces round a section, in the order in which the block is turned on them. */
export type FourFaces = readonly [Face, Face, Face, Face];

/** A remedy with the readings that it would bring; their values do not matter to what they fix. */
export interface Candidate {
  readonly remedy: Remedy;
  readonly readings: readonly Reading[];
}

/** What a toolmaker could still do for `requirement`, the least work first. */
export function candidatesFor(
  requirement: Pick<Requirement, 'face' | 'datum'>,
  readings: readonly Reading[],
  block: Block,
): readonly Candidate[] {
  const { face, datum } = requirement;
  if (areOpposite(face, datum)) return microPlaces(face, block);
  return [
    ...swings(face, datum, readings),
    ...traverses(face, datum, readings),
    microHeights(face, datum, block),
    assumption(face),
    ...fourSides(face, datum, readings, block),
    bothSides(face, datum, block),
  ];
}

/** Readings that could still be added where a requirement is fixed already, to narrow its doubt. */
export function furtherReadings(
  requirement: Pick<Requirement, 'face' | 'datum'>,
  readings: readonly Reading[],
  block: Block,
): readonly Candidate[] {
  const { face, datum } = requirement;
  if (areOpposite(face, datum)) return microPlaces(face, block);
  return [
    ...seatAgain(face, readings),
    ...swings(face, datum, readings),
    ...traverses(face, datum, readings),
    microHeights(face, datum, block),
    bothSides(face, datum, block),
    ...fourSides(face, datum, readings, block),
  ];
}

const REMEDY_ID = 'remedy';

function nose(
  setting: string,
  face: Face,
  base: Face,
  low: number,
  high: number,
): NoseComparatorReading {
  return {
    kind: 'nose comparator',
    id: `${REMEDY_ID} ${setting} ${face}`,
    setting,
    face,
    base,
    noseHeight: low,
    indicatorHeight: high,
    value: 0,
  };
}

/** Settings that have read only one of the two sides. */
function swings(face: Face, base: Face, readings: readonly Reading[]): readonly Candidate[] {
  const comparators = readings.filter(
    (reading): reading is NoseComparatorReading => reading.kind === 'nose comparator',
  );
  return missingSides(face, base, comparators, (reading) => reading.setting).map(
    ([reading, missing]) => ({
      remedy: { kind: 'swing to the other side', setting: reading.setting, face: missing },
      readings: [nose(reading.setting, missing, base, reading.noseHeight, reading.indicatorHeight)],
    }),
  );
}

/** Columns that have read only one of the two sides. */
function traverses(face: Face, base: Face, readings: readonly Reading[]): readonly Candidate[] {
  const columns = readings.filter((reading): reading is ColumnReading => reading.kind === 'column');
  return missingSides(face, base, columns, (reading) => reading.column).map(
    ([reading, missing]) => ({
      remedy: { kind: 'traverse the other side', column: reading.column, face: missing },
      readings: columns
        .filter((other) => other.placing === reading.placing)
        .map((other) => ({
          ...other,
          id: `${REMEDY_ID} ${other.id}`,
          placing: `${REMEDY_ID} placing`,
          face: missing,
        })),
    }),
  );
}

/** For each group, such as a setting, that has read only one of the two sides: a reading of it, and the other side. */
function missingSides<R extends NoseComparatorReading | ColumnReading>(
  face: Face,
  base: Face,
  readings: readonly R[],
  groupOf: (reading: R) => string,
): readonly (readonly [R, Face])[] {
  const sides = [face, oppositeFace(face)];
  const groups = new Map<string, R[]>();
  for (const reading of readings) {
    if (reading.base !== base || !sides.includes(reading.face)) continue;
    groups.set(groupOf(reading), [...(groups.get(groupOf(reading)) ?? []), reading]);
  }
  return [...groups.values()].flatMap((group) => {
    const missing = sides.filter((side) => group.every((reading) => reading.face !== side));
    const [first] = group;
    return missing[0] !== undefined && first !== undefined ? [[first, missing[0]] as const] : [];
  });
}

/** Each side of the pair that a setting has read, once more after lifting the block. */
function seatAgain(face: Face, readings: readonly Reading[]): readonly Candidate[] {
  const sides = [face, oppositeFace(face)];
  const read = new Map<string, NoseComparatorReading>();
  for (const reading of readings) {
    if (reading.kind !== 'nose comparator' || !sides.includes(reading.face)) continue;
    read.set(`${reading.setting} ${reading.face} ${reading.base}`, reading);
  }
  return [...read.values()].map((reading) => ({
    remedy: { kind: 'seat again and read', setting: reading.setting, face: reading.face },
    readings: [{ ...reading, id: REMEDY_ID }],
  }));
}

/**
 * The four corners of the section with a setting that reads it already, where the block is tall
 * enough each way. Their interior angles sum to 360°, so that no word on the taper is needed.
 */
function fourSides(
  face: Face,
  base: Face,
  readings: readonly Reading[],
  block: Block,
): readonly Candidate[] {
  const faces: FourFaces = [base, face, oppositeFace(base), oppositeFace(face)];
  const corners = faces.map((stand, index) => [faces[(index + 1) % 4]!, stand] as const);
  const height = Math.min(depthBehind(block, face), depthBehind(block, base));
  const settings = new Map<string, NoseComparatorReading>();
  for (const reading of readings) {
    if (reading.kind === 'nose comparator' && faces.includes(reading.face)) {
      settings.set(reading.setting, reading);
    }
  }
  const fitting = [...settings.values()].filter(({ indicatorHeight }) => indicatorHeight <= height);
  return fitting.map(({ setting, noseHeight, indicatorHeight }) => ({
    remedy: { kind: 'turn on all four sides', setting, faces },
    readings: corners
      .filter(([read, stand]) => !hasRead(readings, setting, read, stand))
      .map(([read, stand]) => nose(setting, read, stand, noseHeight, indicatorHeight)),
  }));
}

/** True where the setting has read this corner: an angle is the same from either of its faces. */
function hasRead(readings: readonly Reading[], setting: string, one: Face, other: Face): boolean {
  return readings.some(
    (reading) =>
      reading.kind === 'nose comparator' &&
      reading.setting === setting &&
      [reading.face, reading.base].includes(one) &&
      [reading.face, reading.base].includes(other),
  );
}

function microHeights(face: Face, base: Face, block: Block): Candidate {
  const depth = depthBehind(block, base);
  const at = (height: number): Triple => ({
    ...{ x: 0, y: 0, z: 0 },
    [outwardNormal(base).axis]: alongFromBase(block, base, height),
  });
  return {
    remedy: { kind: 'micrometer at two heights', face, base },
    readings: [depth / 4, (3 * depth) / 4].map((height) => micrometer(face, at(height))),
  };
}

function microPlaces(face: Face, block: Block): readonly Candidate[] {
  return cornersOf(block, face).map(({ point, towards }) => ({
    remedy: { kind: 'micrometer at a corner', face, towards },
    readings: [micrometer(face, point)],
  }));
}

function micrometer(face: Face, point: Triple): Reading {
  return { kind: 'micrometer', id: `${REMEDY_ID} micrometer`, face, point, departure: 0 };
}

function assumption(face: Face): Candidate {
  return {
    remedy: { kind: 'assume parallel', face },
    readings: [{ kind: 'assumed parallel', id: REMEDY_ID, face, within: 1 }],
  };
}

function bothSides(face: Face, base: Face, block: Block): Candidate {
  const depth = depthBehind(block, base);
  const faces = [face, oppositeFace(face)] as const;
  return {
    remedy: { kind: 'compare both sides', faces, base },
    readings: faces.map((side) => nose(REMEDY_ID, side, base, depth / 4, (3 * depth) / 4)),
  };
}
