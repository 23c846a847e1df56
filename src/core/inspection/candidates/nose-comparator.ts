import { type Block, depthBehind } from '../../part/block';
import { type Face, oppositeFace } from '../../part/faces';
import type { NoseComparatorReading, Reading } from '../../readings/reading';
import { type Candidate, REMEDY_ID } from './candidate';
import { missingSides } from './missing-sides';

/** A reading of a setting that nobody has taken yet. */
export function nose(
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
export function swings(face: Face, base: Face, readings: readonly Reading[]): readonly Candidate[] {
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

/** Each side of the pair that a setting has read, once more after lifting the block. */
export function seatAgain(face: Face, readings: readonly Reading[]): readonly Candidate[] {
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

/** Both sides with a new setting. */
export function bothSides(face: Face, base: Face, block: Block): Candidate {
  const depth = depthBehind(block, base);
  const faces = [face, oppositeFace(face)] as const;
  return {
    remedy: { kind: 'compare both sides', faces, base },
    readings: faces.map((side) => nose(REMEDY_ID, side, base, depth / 4, (3 * depth) / 4)),
  };
}
