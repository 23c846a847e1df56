import { type Axis, axesInFace, type Face, faceTowards, outwardNormal } from './faces';

/** A point of the block or an extent along each axis, in mm. The origin is the block's centre. */
export type Triple = Readonly<Record<Axis, number>>;

/** The block of the drawing: nominal sizes X × Y × Z in mm. */
export interface Block {
  readonly size: Triple;
  /** Linear coefficient of expansion, 10⁻⁶ per K; left out, warmth is not reckoned with. */
  readonly expansion?: number;
}

/** Extent of the block, in mm, along the normal of `face`: the distance to the opposite face. */
export function depthBehind(block: Block, face: Face): number {
  return block.size[outwardNormal(face).axis];
}

/** A corner of a face: its position in mm and the two neighbouring faces that meet there. */
export interface FaceCorner {
  readonly point: Triple;
  readonly towards: readonly [Face, Face];
}

/** The four corners of `face`, going round it. */
export function cornersOf(block: Block, face: Face): readonly FaceCorner[] {
  const { axis, sign } = outwardNormal(face);
  const [u, v] = axesInFace(face);
  const turns = [
    [-1, -1],
    [1, -1],
    [1, 1],
    [-1, 1],
  ] as const;
  return turns.map(([signU, signV]) => ({
    point: {
      ...{ x: 0, y: 0, z: 0 },
      [axis]: (sign * block.size[axis]) / 2,
      [u]: (signU * block.size[u]) / 2,
      [v]: (signV * block.size[v]) / 2,
    },
    towards: [faceTowards(u, signU), faceTowards(v, signV)],
  }));
}

/**
 * Where a point `height` mm above the face `base` lies along the normal of `base`, from the centre
 * of the block, in mm along that axis.
 */
export function alongFromBase(block: Block, base: Face, height: number): number {
  const { axis, sign } = outwardNormal(base);
  return sign * (block.size[axis] / 2 - height);
}
