import { cornersOf, type Triple } from '../../../core/part/block';
import { type Axis, axesInFace, FACES, type Face, outwardNormal } from '../../../core/part/faces';
import { drawable, finite } from '../geometry';
import type { DrawnBlock } from './drawn-block';
import { meetingPoint } from './space';

const MIDDLE: Triple = { x: 0, y: 0, z: 0 };

/** The four corners of a face as it is now, going round it. */
export function outlineOf({ faces, sizes }: DrawnBlock, face: Face): readonly Triple[] {
  return cornersOf({ size: sizes }, face).map(({ towards: [one, other] }) =>
    meetingPoint(faces[face], faces[one], faces[other]),
  );
}

/** The four corners of a face if the block were just as it is drawn on paper. */
export function squareOutlineOf({ sizes }: DrawnBlock, face: Face): readonly Triple[] {
  return cornersOf({ size: sizes }, face).map(({ point }) => point);
}

/** Both ends of the edge that two faces share. */
export function edgeOf({ faces }: DrawnBlock, face: Face, other: Face): readonly [Triple, Triple] {
  const along = axesInFace(face).find((axis) => axis !== outwardNormal(other).axis) ?? 'x';
  const ends = FACES.filter((one) => outwardNormal(one).axis === along);
  const [from, to] = ends.map((end) => meetingPoint(faces[face], faces[other], faces[end]));
  return [from ?? MIDDLE, to ?? MIDDLE];
}

/** The point of a face at `place`, in mm of the real block from the middle of the face along its axes. */
export function pointOn(
  { shown, sizes, faces }: DrawnBlock,
  face: Face,
  place: Readonly<Partial<Record<Axis, number>>>,
): Triple {
  const { axis } = outwardNormal(face);
  const { normal, distance } = faces[face];
  const point: Record<Axis, number> = { ...MIDDLE };
  let rest = distance;
  for (const along of axesInFace(face)) {
    point[along] = (finite(place[along] ?? 0) * sizes[along]) / drawable(shown.size[along]);
    rest -= normal[along] * point[along];
  }
  point[axis] = rest / normal[axis];
  return point;
}
