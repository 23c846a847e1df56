import { alongFromBase, depthBehind, type Triple } from '../core/part/block';
import { type Face, outwardNormal } from '../core/part/faces';
import type { Part } from '../core/part/part';
import { fieldKey } from './field-keys';
import { placeLimits } from './limits';
import { placeEdges } from './place-edges';
import type { ProblemList } from './problems';
import { readLength } from './read-length';
import { isBlank, type TypedLength } from './typed-length';

/** A place on a face as typed: distances from its two edges, `across` left empty for the middle. */
interface TypedPlace {
  readonly id: string;
  readonly up: TypedLength;
  readonly across: TypedLength;
}

/** The place in mm from the centre of the block, or undefined with what is wrong or still missing noted. */
export function pointOnFace(
  place: TypedPlace,
  face: Face,
  part: Part,
  problems: ProblemList,
  begun: boolean,
): Triple | undefined {
  const edges = placeEdges(face, part.datum);
  const along = (typed: TypedLength, key: string, from: Face, missing?: string) => {
    const limits = placeLimits(depthBehind(part.block, from));
    const distance = readLength(typed, key, problems, limits, missing);
    return distance === undefined ? undefined : alongFromBase(part.block, from, distance / 1000);
  };
  const asked = begun ? 'Where was it?' : undefined;
  const up = along(place.up, fieldKey.up(place.id), edges.up, asked);
  const across = isBlank(place.across)
    ? 0
    : along(place.across, fieldKey.across(place.id), edges.across);
  if (up === undefined || across === undefined) return undefined;
  const [upAxis, acrossAxis] = [edges.up, edges.across].map((edge) => outwardNormal(edge).axis);
  return { x: 0, y: 0, z: 0, [upAxis as string]: up, [acrossAxis as string]: across };
}
