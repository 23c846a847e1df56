import { alongFromBase, depthBehind } from '../core/part/block';
import { type Face, outwardNormal } from '../core/part/faces';
import type { Part } from '../core/part/part';
import type { MicrometerReading } from '../core/readings/reading';
import { fieldKey } from './field-keys';
import { placeLimits, STEEPEST, TOO_STEEP, thicknessLimits } from './limits';
import { placeEdges } from './place-edges';
import type { ProblemList } from './problems';
import { readLength } from './read-length';
import type { MicrometerSetup } from './setup-entry';
import { isBlank, type TypedLength } from './typed-length';

/** Reads the thicknesses of one pair of faces. */
export function readMicrometer(
  setup: MicrometerSetup,
  part: Part,
  problems: ProblemList,
): readonly MicrometerReading[] {
  const [face] = setup.faces;
  const edges = placeEdges(face, part.datum);
  const nominal = depthBehind(part.block, face);
  const readings = setup.places.flatMap((place) => {
    const begun = [place.up, place.across, place.thickness].some((typed) => !isBlank(typed));
    const ask = (what: string) => (begun ? what : undefined);
    const up = readPlace(place.up, fieldKey.up(place.id), edges.up, ask('Where was it?'));
    const across = isBlank(place.across)
      ? { axis: outwardNormal(edges.across).axis, along: 0 }
      : readPlace(place.across, fieldKey.across(place.id), edges.across);
    const thickness = readLength(
      place.thickness,
      fieldKey.thickness(place.id),
      problems,
      thicknessLimits(nominal),
      ask('What did the micrometer say?'),
    );
    if (up === undefined || across === undefined || thickness === undefined) return [];
    const point = { x: 0, y: 0, z: 0, [up.axis]: up.along, [across.axis]: across.along };
    const { kind } = setup;
    return [{ kind, id: place.id, face, point, departure: thickness - nominal * 1000 }];
  });
  refuseSteep(readings, problems);
  return readings;

  function readPlace(typed: TypedLength, key: string, from: Face, missing?: string) {
    const limits = placeLimits(depthBehind(part.block, from));
    const distance = readLength(typed, key, problems, limits, missing);
    if (distance === undefined) return undefined;
    const along = alongFromBase(part.block, from, distance / 1000);
    return { axis: outwardNormal(from).axis, along };
  }
}

/** Differences below this, in µm, are never refused: two places may lie close together. */
const ALWAYS_PLAUSIBLE = 100;

function refuseSteep(readings: readonly MicrometerReading[], problems: ProblemList): void {
  const [first, ...others] = readings;
  for (const { id, point, departure } of others) {
    const { point: start, departure: startDeparture } = first as MicrometerReading;
    const apart = Math.hypot(point.x - start.x, point.y - start.y, point.z - start.z);
    const difference = Math.abs(departure - startDeparture);
    if (difference > Math.max(ALWAYS_PLAUSIBLE, STEEPEST * apart)) {
      problems.wrong(fieldKey.thickness(id), TOO_STEEP);
    }
  }
}
