import { depthBehind } from '../../core/part/block';
import type { Face } from '../../core/part/faces';
import type { Part } from '../../core/part/part';
import { millimetresForDrawing } from '../../entry/for-drawing';
import { placeEdges } from '../../entry/place-edges';
import { isBlank } from '../../entry/typed-length';
import type { PlaceEntry } from './place-fields';

/** A place as it is drawn: mm from the lower left corner of the face. */
interface DrawnPlace {
  readonly across: number;
  readonly up: number;
  readonly text: string;
  readonly active: boolean;
  /** Counted from 1, those too that cannot be drawn yet. */
  readonly number: number;
}

/** The places that can be drawn so far; one without a distance across is on the middle line. */
export function placesOnFace(
  face: Face,
  places: readonly (PlaceEntry & { readonly text: string })[],
  part: Part,
  active: number,
): DrawnPlace[] {
  const edges = placeEdges(face, part.datum);
  const middle = depthBehind(part.block, edges.across) / 2;
  return places.flatMap((place, index) => {
    const up = millimetresForDrawing(place.up);
    const across = isBlank(place.across) ? middle : millimetresForDrawing(place.across);
    if (up === undefined || across === undefined) return [];
    return [{ across, up, text: place.text, active: index === active, number: index + 1 }];
  });
}
