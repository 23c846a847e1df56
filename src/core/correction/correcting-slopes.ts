import type { Block } from '../part/block';
import { axesInFace, type Face, outwardNormal } from '../part/faces';
import { evaluate } from '../part/linear-form';
import { kindOf, type Requirement } from '../part/requirement';
import { zoneForms } from '../zones/requirement-forms';
import type { Zone } from '../zones/zone';
import { changeOfUnknowns, type FaceSlopes } from './removal';

/** Part of the width below which a slope is rounding: it must not make a corner of an edge. */
const ROUNDING = 1e-9;

/**
 * The slopes to take off `worked`, which is either face of `requirement`, to bring its zone to
 * nothing. Squareness: e(f, g) changes by the slope going towards the other face, whichever of the
 * two is worked. Parallelism: the slopes are the taper itself.
 *
 * @throws RangeError where `worked` is not one of the two faces.
 */
export function correctingSlopes(
  requirement: Pick<Requirement, 'face' | 'datum'>,
  worked: Face,
  zone: Zone,
  block: Block,
): FaceSlopes {
  const { face, datum } = requirement;
  if (worked !== face && worked !== datum) {
    throw new RangeError(`${worked} is not a face of this requirement`);
  }
  const other = worked === face ? datum : face;
  const axes =
    kindOf(requirement) === 'squareness' ? [outwardNormal(other).axis] : axesInFace(worked);
  const forms = zoneForms(requirement, block);
  // Each part of the zone answers to one axis; a slope of 1 on it tells how strongly.
  return Object.fromEntries(
    axes.map((axis, index) => {
      const unit = changeOfUnknowns({ face: worked, mean: 0, slopes: { [axis]: 1 } });
      const response = evaluate(forms[index]!, unit);
      const { value } = zone.parts[index]!;
      return [axis, Math.abs(value) < ROUNDING * zone.width ? 0 : -value / response];
    }),
  );
}
