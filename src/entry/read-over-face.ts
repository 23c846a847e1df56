import type { PlannedPlace } from '../core/inspection/flatness';
import type { Part } from '../core/part/part';
import type { FaceMapReading, OverTheTopReading } from '../core/readings/reading';
import { fieldKey } from './field-keys';
import { READING } from './limits';
import { ProblemList } from './problems';
import { readLength } from './read-length';
import { pointOnFace } from './read-place';
import type { OverFaceSetup, SetupEntry } from './setup-entry';
import { isBlank } from './typed-length';

/** Reads what an indicator showed at places over a face. */
export function readOverFace(
  setup: OverFaceSetup,
  part: Part,
  problems: ProblemList,
): readonly (OverTheTopReading | FaceMapReading)[] {
  const [face] = setup.faces;
  return setup.places.flatMap((place) => {
    const begun = [place.up, place.across, place.reading].some((typed) => !isBlank(typed));
    const point = pointOnFace(place, face, part, problems, begun);
    const asked = begun ? 'What did the indicator show?' : undefined;
    const key = fieldKey.placing(place.id);
    const value = readLength(place.reading, key, problems, READING, asked);
    if (point === undefined || value === undefined) return [];
    const { kind } = setup;
    return [{ kind, id: place.id, placing: setup.id, face, point, value }];
  });
}

/** The places of a map that have nothing read at them yet. */
export function plannedPlaces(setup: SetupEntry, part: Part): readonly PlannedPlace[] {
  if (setup.kind !== 'face map') return [];
  const [face] = setup.faces;
  return setup.places.flatMap((place) => {
    if (!isBlank(place.reading)) return [];
    // What is wrong with a place is noted where it is read.
    const point = pointOnFace(place, face, part, new ProblemList(), false);
    return point === undefined ? [] : [{ face, point }];
  });
}
