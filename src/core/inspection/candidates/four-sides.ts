import { groupedBy } from '../../grouped-by';
import { type Block, depthBehind } from '../../part/block';
import { type Face, oppositeFace } from '../../part/faces';
import type { ColumnReading, NoseComparatorReading, Reading } from '../../readings/reading';
import { type Candidate, type FourFaces, REMEDY_ID } from './candidate';
import { nose } from './nose-comparator';

/**
 * The four corners of the section with a setting or column that reads it already, where the block is
 * tall enough each way. Their interior angles sum to 360°, so that no word on the taper is needed.
 */
export function fourSides(
  face: Face,
  base: Face,
  readings: readonly Reading[],
  block: Block,
): readonly Candidate[] {
  const faces: FourFaces = [base, face, oppositeFace(base), oppositeFace(face)];
  const height = Math.min(depthBehind(block, face), depthBehind(block, base));
  return [...withSettings(faces, readings, height), ...withColumns(faces, readings, height)];
}

function withSettings(
  faces: FourFaces,
  readings: readonly Reading[],
  height: number,
): readonly Candidate[] {
  const settings = new Map<string, NoseComparatorReading>();
  for (const reading of readings) {
    if (reading.kind === 'nose comparator' && isRound(faces, reading)) {
      settings.set(reading.setting, reading);
    }
  }
  const fitting = [...settings.values()].filter(({ indicatorHeight }) => indicatorHeight <= height);
  return fitting.map(({ setting, noseHeight, indicatorHeight }) => {
    const own = readings.filter(
      (one) => one.kind === 'nose comparator' && one.setting === setting,
    ) as readonly NoseComparatorReading[];
    return {
      remedy: { kind: 'turn on all four sides', setting, faces },
      readings: cornersLeft(faces, own).map(([read, stand]) =>
        nose(setting, read, stand, noseHeight, indicatorHeight),
      ),
    };
  });
}

function withColumns(
  faces: FourFaces,
  readings: readonly Reading[],
  height: number,
): readonly Candidate[] {
  const round = traversesOf(readings).filter(([first]) => isRound(faces, first!));
  const columns = groupedBy(round.flat(), ({ column }) => column);
  return [...columns].flatMap(([column, own]) => {
    const like = own.filter(({ placing }) => placing === own[0]!.placing);
    if (like.some((reading) => reading.height > height)) return [];
    return [
      {
        remedy: { kind: 'turn on all four sides' as const, column, faces },
        readings: cornersLeft(faces, own).flatMap(([read, stand]) =>
          like.map((reading) => ({
            ...reading,
            id: `${REMEDY_ID} ${reading.id} ${read} on ${stand}`,
            placing: `${REMEDY_ID} ${column} up ${read} on ${stand}`,
            ...{ face: read, base: stand },
          })),
        ),
      },
    ];
  });
}

/** True for a reading of the section itself: one of its faces on another. */
function isRound(faces: FourFaces, { face, base }: NoseComparatorReading | ColumnReading): boolean {
  return faces.includes(face) && faces.includes(base);
}

/** The readings of each placing of a column that has two heights or more: one alone shows no lean. */
function traversesOf(readings: readonly Reading[]): readonly (readonly ColumnReading[])[] {
  const onColumns = readings.filter((reading) => reading.kind === 'column');
  const placings = groupedBy(onColumns, ({ placing }) => placing);
  return [...placings.values()].filter(({ length }) => length > 1);
}

/** Each corner, as the face to read and what to stand on, that has not been read: an angle is the same from either of its faces. */
function cornersLeft(
  faces: FourFaces,
  own: readonly (NoseComparatorReading | ColumnReading)[],
): readonly (readonly [Face, Face])[] {
  const corners = faces.map((stand, index) => [faces[(index + 1) % 4]!, stand] as const);
  return corners.filter(
    ([one, other]) =>
      !own.some(({ face, base }) => [face, base].includes(one) && [face, base].includes(other)),
  );
}
