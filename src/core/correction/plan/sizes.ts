import type { Adjustment } from '../../adjustment/adjustment';
import { cornersOf, type FaceCorner } from '../../part/block';
import { thicknessDeparture } from '../../part/face-errors';
import { AXES, type Axis, faceTowards } from '../../part/faces';
import type { Part } from '../../part/part';

/** A size at one corner of the face that looks along its axis. */
export interface SizeAtCorner extends FaceCorner {
  /** From the nominal size, µm. */
  readonly departure: number;
  /** Standard uncertainty, µm. */
  readonly standard: number;
  readonly degreesOfFreedom: number;
}

/** The sizes along each axis at their four corners; undefined where the readings do not fix one. */
export type Sizes<Corner = SizeAtCorner> = Readonly<Record<Axis, readonly Corner[] | undefined>>;

/** The sizes of `part` as `adjustment` has them. */
export function sizesOf(part: Pick<Part, 'block'>, adjustment: Adjustment): Sizes {
  const sizeAlong = (axis: Axis) => {
    const face = faceTowards(axis, 1);
    const corners = cornersOf(part.block, face).flatMap((corner) => {
      const estimate = adjustment.estimate(thicknessDeparture(face, corner.point));
      if (estimate === undefined) return [];
      const { value, standard, degreesOfFreedom } = estimate;
      return [{ ...corner, departure: value, standard, degreesOfFreedom }];
    });
    return corners.length === 4 ? corners : undefined;
  };
  const [x, y, z] = AXES.map(sizeAlong);
  return { x, y, z };
}
