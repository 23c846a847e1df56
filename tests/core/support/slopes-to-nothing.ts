import type { FaceSlopes } from '../../../src/core/correction/removal';
import type { Block } from '../../../src/core/part/block';
import { areOpposite, axesInFace, type Face, outwardNormal } from '../../../src/core/part/faces';
import type { Requirement } from '../../../src/core/part/requirement';
import type { Zone } from '../../../src/core/zones/zone';

/**
 * The slopes, µm/mm, that have to come off `worked` to bring `zone` to nothing, by hand. A squareness
 * of e µm/mm, found as e times the length that goes away from the datum: the far edge, going away
 * from the other face, comes off steeper by e. Parallelism: the slopes are the tapers themselves.
 */
export function slopesToNothing(
  { face, datum }: Pick<Requirement, 'face' | 'datum'>,
  worked: Face,
  { parts }: Pick<Zone, 'parts'>,
  { size }: Block,
): FaceSlopes {
  if (areOpposite(face, datum)) {
    return Object.fromEntries(
      axesInFace(face).map((axis, k) => [axis, parts[k]!.value / size[axis]]),
    );
  }
  const { axis, sign } = outwardNormal(worked === face ? datum : face);
  const e = parts[0]!.value / size[outwardNormal(datum).axis];
  return { [axis]: -sign * e };
}
