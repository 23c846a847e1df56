import type { Triple } from './block';
import {
  type Axis,
  areNeighbours,
  axesInFace,
  type Face,
  oppositeFace,
  outwardNormal,
} from './faces';
import { type LinearForm, scaled, sum, unknown } from './linear-form';

/*
 * Each face f deviates outward from the block of the drawing by d_f(p) = offset + slope·p, p from
 * the block's centre. A face so has one offset (µm) and two slopes (µm/mm, one along each axis in
 * the face), which are the unknowns that readings are to settle.
 */

/** Name of the offset of `face` at the block's centre line, µm, outward positive. */
export function offsetOf(face: Face): string {
  return `offset of ${face}`;
}

/** Name of the slope of `face` along `axis`, µm/mm: positive where it grows outward along the axis. */
export function slopeOf(face: Face, axis: Axis): string {
  return `slope of ${face} along ${axis}`;
}

/** The slope of `face` going in the direction of the outward normal of `direction`, µm/mm. */
function slopeTowards(face: Face, direction: Face): LinearForm {
  const { axis, sign } = outwardNormal(direction);
  return scaled(unknown(slopeOf(face, axis)), sign);
}

/**
 * Out-of-square of `face` to `base`, µm/mm: the interior angle less 90°, in mrad. Positive is
 * obtuse: the face leans outward going away from the base. It is the same with the two exchanged.
 *
 * @throws RangeError where the two faces do not share an edge.
 */
export function outOfSquare(face: Face, base: Face): LinearForm {
  if (!areNeighbours(face, base)) throw new RangeError(`${face} and ${base} share no edge`);
  return scaled(sum(slopeTowards(face, base), slopeTowards(base, face)), -1);
}

/** How far `face` stands outside the drawing at `point` (mm), µm: d_f(p). */
export function deviation(face: Face, point: Triple): LinearForm {
  const slopes = axesInFace(face).map((axis) => scaled(unknown(slopeOf(face, axis)), point[axis]));
  return sum(unknown(offsetOf(face)), ...slopes);
}

/** How much thicker than the drawing the block is between `face` and its opposite at `point`, µm. */
export function thicknessDeparture(face: Face, point: Triple): LinearForm {
  return sum(deviation(face, point), deviation(oppositeFace(face), point));
}

/** Growth of the thickness between `face` and its opposite per mm going towards `direction`, µm/mm. */
export function taper(face: Face, direction: Face): LinearForm {
  return sum(slopeTowards(face, direction), slopeTowards(oppositeFace(face), direction));
}
