/**
 * The six faces of a block, seen from the front: X to the right, Y away, Z up.
 * A face is named by the side that its outward normal points to.
 */
export const FACES = ['right', 'left', 'back', 'front', 'top', 'bottom'] as const;
export type Face = (typeof FACES)[number];

export const AXES = ['x', 'y', 'z'] as const;
export type Axis = (typeof AXES)[number];

interface Normal {
  readonly axis: Axis;
  readonly sign: 1 | -1;
}

const NORMALS: Readonly<Record<Face, Normal>> = {
  right: { axis: 'x', sign: 1 },
  left: { axis: 'x', sign: -1 },
  back: { axis: 'y', sign: 1 },
  front: { axis: 'y', sign: -1 },
  top: { axis: 'z', sign: 1 },
  bottom: { axis: 'z', sign: -1 },
};

const OPPOSITES: Readonly<Record<Face, Face>> = {
  right: 'left',
  left: 'right',
  back: 'front',
  front: 'back',
  top: 'bottom',
  bottom: 'top',
};

/** Axis and sign of the outward normal of `face`. */
export function outwardNormal(face: Face): Normal {
  return NORMALS[face];
}

/** The face on the other side of the block. */
export function oppositeFace(face: Face): Face {
  return OPPOSITES[face];
}

/** True where the two faces are parallel to each other on the drawing. */
export function areOpposite(a: Face, b: Face): boolean {
  return OPPOSITES[a] === b;
}

/** True where the two faces share an edge. */
export function areNeighbours(a: Face, b: Face): boolean {
  return NORMALS[a].axis !== NORMALS[b].axis;
}

/** The two axes that lie in `face`, in the order x, y, z. */
export function axesInFace(face: Face): readonly [Axis, Axis] {
  const [first, second] = AXES.filter((axis) => axis !== NORMALS[face].axis);
  return [first as Axis, second as Axis];
}

/** The face that looks along `axis` in the direction of `sign`. */
export function faceTowards(axis: Axis, sign: number): Face {
  const face = FACES.find((f) => NORMALS[f].axis === axis && NORMALS[f].sign === Math.sign(sign));
  if (face === undefined) throw new RangeError(`No face looks along ${axis} with sign ${sign}`);
  return face;
}

/** The three pairs of opposite faces. */
export const FACE_PAIRS: readonly (readonly [Face, Face])[] = [
  ['right', 'left'],
  ['back', 'front'],
  ['top', 'bottom'],
];

/** The four faces that share an edge with `face`, as two opposite pairs. */
export function pairsAround(face: Face): readonly (readonly [Face, Face])[] {
  return FACE_PAIRS.filter(([one]) => areNeighbours(one, face));
}
