import { depthBehind } from '../core/part/block';
import type { Part } from '../core/part/part';
import type { MicrometerReading } from '../core/readings/reading';
import { fieldKey } from './field-keys';
import { STEEPEST, TOO_STEEP, thicknessLimits } from './limits';
import type { ProblemList } from './problems';
import { readLength } from './read-length';
import { pointOnFace } from './read-place';
import type { MicrometerSetup } from './setup-entry';
import { isBlank } from './typed-length';

/** Reads the thicknesses of one pair of faces. */
export function readMicrometer(
  setup: MicrometerSetup,
  part: Part,
  problems: ProblemList,
): readonly MicrometerReading[] {
  const [face] = setup.faces;
  const nominal = depthBehind(part.block, face);
  const limits = thicknessLimits(nominal);
  const readings = setup.places.flatMap((place) => {
    const begun = [place.up, place.across, place.thickness].some((typed) => !isBlank(typed));
    const point = pointOnFace(place, face, part, problems, begun);
    const asked = begun ? 'What did the micrometer say?' : undefined;
    const key = fieldKey.thickness(place.id);
    const thickness = readLength(place.thickness, key, problems, limits, asked);
    if (point === undefined || thickness === undefined) return [];
    const { kind } = setup;
    return [{ kind, id: place.id, face, point, departure: thickness - nominal * 1000 }];
  });
  return withoutSteep(readings, problems);
}

/** Differences below this, in µm, are never refused: two places may lie close together. */
const ALWAYS_PLAUSIBLE = 100;

/** The readings that can be of a part nearly square; the first is what the others are held against. */
function withoutSteep(
  readings: readonly MicrometerReading[],
  problems: ProblemList,
): readonly MicrometerReading[] {
  const [first] = readings;
  return readings.filter(({ id, point, departure }) => {
    const { point: start, departure: startDeparture } = first as MicrometerReading;
    const apart = Math.hypot(point.x - start.x, point.y - start.y, point.z - start.z);
    const difference = Math.abs(departure - startDeparture);
    const steep = difference > Math.max(ALWAYS_PLAUSIBLE, STEEPEST * apart);
    if (steep) problems.wrong(fieldKey.thickness(id), TOO_STEEP);
    return !steep;
  });
}
