import {
  AXES,
  type Axis,
  type Face,
  faceTowards,
  oppositeFace,
  outwardNormal,
} from '../../core/part/faces';

/** A direction along an axis of the block. */
export interface Direction {
  readonly axis: Axis;
  readonly sign: 1 | -1;
}

/** A face as a viewer has it: what runs right and up, and the neighbour at each of its four sides. */
export interface FaceView {
  readonly right: Direction;
  readonly up: Direction;
  readonly edges: Readonly<Record<'top' | 'bottom' | 'left' | 'right', Face>>;
}

/** Both ways to see a face. */
export interface FaceViews {
  /** Looking at the face itself, from outside the block. */
  readonly outside: FaceView;
  /** Looking down through the block while the face lies on the paper: at the opposite face, from outside. */
  readonly through: FaceView;
}

/** How `face` is seen. Up is the block's top; on the top and the bottom, up is the back. */
export function faceView(face: Face): FaceViews {
  return { outside: seenFromOutside(face), through: seenFromOutside(oppositeFace(face)) };
}

/** The face that the viewer looks at where `right` is at the right and the part stands on `base`. */
export function seenFrom(right: Face, base: Face): Face {
  const { axis, sign } = cross(outwardNormal(right), outwardNormal(oppositeFace(base)));
  return faceTowards(axis, sign);
}

function seenFromOutside(face: Face): FaceView {
  const normal = outwardNormal(face);
  const up: Direction = { axis: normal.axis === 'z' ? 'y' : 'z', sign: 1 };
  const right = cross(up, normal);
  return {
    right,
    up,
    edges: {
      top: faceTowards(up.axis, up.sign),
      bottom: faceTowards(up.axis, -up.sign),
      left: faceTowards(right.axis, -right.sign),
      right: faceTowards(right.axis, right.sign),
    },
  };
}

/** The cross product of two directions along different axes. */
function cross(a: Direction, b: Direction): Direction {
  const axis = AXES.find((one) => one !== a.axis && one !== b.axis) ?? a.axis;
  // x, y, z in turn make a right-handed screw.
  const inTurn = (AXES.indexOf(b.axis) - AXES.indexOf(a.axis) + 3) % 3 === 1;
  return { axis, sign: a.sign * b.sign * (inTurn ? 1 : -1) === 1 ? 1 : -1 };
}
