import { type Block, depthBehind } from '../../part/block';
import { type Face, oppositeFace } from '../../part/faces';
import type { NoseComparatorReading, Reading } from '../../readings/reading';
import type { Candidate, FourFaces } from './candidate';
import { nose } from './nose-comparator';

/**
 * The four corners of the section with a setting that reads it already, where the block is tall
 * enough each way. Their interior angles sum to 360°, so that no word on the taper is needed.
 */
export function fourSides(
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
