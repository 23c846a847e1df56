import { depthBehind } from '../../core/part/block';
import type { Part } from '../../core/part/part';
import { millimetresForDrawing } from '../../entry/for-drawing';
import { placeEdges } from '../../entry/place-edges';
import type { MicrometerSetup } from '../../entry/setup-entry';
import { isBlank } from '../../entry/typed-length';

/** A place as it is drawn: mm from the lower left corner of the face. */
interface DrawnPlace {
  readonly across: number;
  readonly up: number;
  readonly text: string;
  readonly active: boolean;
}

/** The places that can be drawn so far; one without a distance across is on the middle line. */
export function placesOnFace(setup: MicrometerSetup, part: Part, active: number): DrawnPlace[] {
  const edges = placeEdges(setup.faces[0], part.datum);
  const middle = depthBehind(part.block, edges.across) / 2;
  return setup.places.flatMap((place, index) => {
    const up = millimetresForDrawing(place.up);
    const across = isBlank(place.across) ? middle : millimetresForDrawing(place.across);
    if (up === undefined || across === undefined) return [];
    return [{ across, up, text: place.thickness.text, active: index === active }];
  });
}
