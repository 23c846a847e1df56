import type { Block } from '../part/block';
import { depthBehind } from '../part/block';
import { outOfSquare, taper } from '../part/face-errors';
import { axesInFace, faceTowards } from '../part/faces';
import { type LinearForm, scaled } from '../part/linear-form';
import { kindOf, type Requirement } from '../part/requirement';

/**
 * The parts, µm, whose sizes add up to the width of the zone that `requirement` asks about, over
 * the full face (ISO 1101).
 *
 * Squareness: two planes exactly square to the datum; turning about the datum's normal is free, so
 * only the slope away from the datum counts. Parallelism: two planes parallel to the datum; both
 * slopes count, and the corners see their sum.
 */
export function zoneForms(
  requirement: Pick<Requirement, 'face' | 'datum'>,
  block: Block,
): readonly LinearForm[] {
  const { face, datum } = requirement;
  if (kindOf(requirement) === 'squareness') {
    return [scaled(outOfSquare(face, datum), depthBehind(block, datum))];
  }
  return axesInFace(face).map((axis) =>
    scaled(taper(face, faceTowards(axis, 1)), block.size[axis]),
  );
}
