import { type Axis, type Face, outwardNormal } from '../../core/part/faces';

/** A point of the drawing, x to the right and y down. */
export interface Spot {
  readonly x: number;
  readonly y: number;
}

/** Cosine and sine of 30°: the view is isometric. */
const [COS, SIN] = [Math.cos(Math.PI / 6), 0.5];

/** The faces that an isometric view from the front, the right and above shows. */
export const SHOWN: readonly Face[] = ['front', 'right', 'top'];

/** A block in isometric view, fitted into a square. */
export interface BlockView {
  readonly spot: (x: 0 | 1, y: 0 | 1, z: 0 | 1) => Spot;
  readonly width: number;
  readonly height: number;
}

/** The view of a block with sizes in mm; corners are given by 0 or 1 along X, Y and Z. */
export function blockView(size: Readonly<Record<Axis, number>>, side: number): BlockView {
  // A thin block stays to be seen as one.
  const most = Math.max(size.x, size.y, size.z);
  const drawn = (axis: Axis) => Math.max(size[axis], most / 6);
  const [x, y, z] = [drawn('x'), drawn('y'), drawn('z')];
  const [wide, tall] = [(x + y) * COS, (x + y) * SIN + z];
  const scale = side / Math.max(wide, tall);
  return {
    width: wide * scale,
    height: tall * scale,
    spot: (i, j, k) => ({
      x: (i * x + j * y) * COS * scale,
      y: (tall - k * z - (j * y - i * x) * SIN - x * SIN) * scale,
    }),
  };
}

/** The four corners of a face, going round it. */
export function cornersOfFace(face: Face): readonly (readonly [0 | 1, 0 | 1, 0 | 1])[] {
  const { axis, sign } = outwardNormal(face);
  const at = sign === 1 ? 1 : 0;
  const round = [
    [0, 0],
    [1, 0],
    [1, 1],
    [0, 1],
  ] as const;
  return round.map(([u, v]) => {
    if (axis === 'x') return [at, u, v];
    return axis === 'y' ? [u, at, v] : [u, v, at];
  });
}
