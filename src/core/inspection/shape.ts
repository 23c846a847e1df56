import type { Adjustment } from '../adjustment/adjustment';
import { outOfSquare, taper } from '../part/face-errors';
import {
  type Axis,
  areNeighbours,
  FACES,
  type Face,
  faceTowards,
  oppositeFace,
  outwardNormal,
} from '../part/faces';
import type { LinearForm } from '../part/linear-form';
import type { Part } from '../part/part';

/** Slopes of the faces along the axes in them, µm/mm, + where a face grows outward; what is not fixed is left out. */
export type Shape = Readonly<Partial<Record<Face, Readonly<Partial<Record<Axis, number>>>>>>;

/**
 * The shape of the block as the readings have it, to be drawn: it lies on its datum, which is taken
 * as true, and is turned about the datum's normal so that one upright face stands true along it.
 * Angles between faces do not hang on how the block lies, so this choice changes none.
 */
export function shapeOf(part: Pick<Part, 'datum'>, adjustment: Adjustment): Shape {
  const { datum } = part;
  const [reference] = FACES.filter((face) => areNeighbours(face, datum));
  const slope = (form: LinearForm, sign: 1 | -1) => {
    const value = adjustment.valueOf(form);
    return value === undefined ? undefined : sign * value;
  };
  /** The slope of `face` away from `from`, which is true: the outward lean along its normal. */
  const leanFrom = (face: Face, from: Face) => {
    const { axis, sign } = outwardNormal(from);
    // e = -(g_face · n_from), as the other face has no slope.
    return [axis, slope(outOfSquare(face, from), sign === 1 ? -1 : 1)] as const;
  };
  /** The slope of the face opposite to `from`, which is true, along `axis`. */
  const taperFrom = (from: Face, axis: Axis) =>
    [axis, slope(taper(oppositeFace(from), faceTowards(axis, 1)), 1)] as const;

  const upright = FACES.filter((face) => areNeighbours(face, datum));
  const inReference = outwardNormal(upright.find((face) => areNeighbours(face, reference!))!).axis;
  const known = FACES.map((face) => {
    if (face === datum) return [face, []] as const;
    if (face === oppositeFace(datum)) {
      const axes = upright.map((each) => outwardNormal(each).axis);
      return [face, [...new Set(axes)].map((axis) => taperFrom(datum, axis))] as const;
    }
    const lean = leanFrom(face, datum);
    if (face === reference) return [face, [lean, [inReference, 0] as const]] as const;
    const turn =
      face === oppositeFace(reference!)
        ? taperFrom(reference!, inReference)
        : leanFrom(face, reference!);
    return [face, [lean, turn]] as const;
  });
  return Object.fromEntries(
    known.map(([face, slopes]) => [
      face,
      Object.fromEntries(slopes.filter(([, value]) => value !== undefined)),
    ]),
  );
}
