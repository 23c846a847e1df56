import type { Triple } from '../../../src/core/part/block';
import {
  AXES,
  type Axis,
  type Face,
  faceTowards,
  outwardNormal,
} from '../../../src/core/part/faces';
import type { Part } from '../../../src/core/part/part';
import type { Reading } from '../../../src/core/readings/reading';

/** Where each axis of the block points after it has been turned over. */
export type Rotation = Readonly<Record<Axis, { readonly axis: Axis; readonly sign: 1 | -1 }>>;

const ORDERS: readonly (readonly [Axis, Axis, Axis, parity: number])[] = [
  ['x', 'y', 'z', 1],
  ['y', 'z', 'x', 1],
  ['z', 'x', 'y', 1],
  ['y', 'x', 'z', -1],
  ['x', 'z', 'y', -1],
  ['z', 'y', 'x', -1],
];

/** The 24 ways to put a block down on its faces: proper rotations, no mirror images. */
export const ROTATIONS: readonly Rotation[] = ORDERS.flatMap(([x, y, z, parity]) =>
  ([1, -1] as const).flatMap((signX) =>
    ([1, -1] as const).map((signY) => ({
      x: { axis: x, sign: signX },
      y: { axis: y, sign: signY },
      z: { axis: z, sign: (parity * signX * signY) as 1 | -1 },
    })),
  ),
);

export function turnedFace(rotation: Rotation, face: Face): Face {
  const { axis, sign } = outwardNormal(face);
  return faceTowards(rotation[axis].axis, sign * rotation[axis].sign);
}

/** Numbers along the axes, such as a place or slopes, turned with the block. */
export function turned<T extends Partial<Triple>>(rotation: Rotation, along: T): T {
  const entries = AXES.filter((axis) => along[axis] !== undefined).map((axis) => [
    rotation[axis].axis,
    rotation[axis].sign * along[axis]!,
  ]);
  return Object.fromEntries(entries) as T;
}

export function turnedReading(rotation: Rotation, reading: Reading): Reading {
  const face = turnedFace(rotation, reading.face);
  switch (reading.kind) {
    case 'nose comparator':
    case 'column':
      return { ...reading, face, base: turnedFace(rotation, reading.base) };
    case 'micrometer':
    case 'over the top':
    case 'face map':
      return { ...reading, face, point: turned(rotation, reading.point) };
    case 'assumed parallel':
      return { ...reading, face };
  }
}

export function turnedPart(rotation: Rotation, part: Part): Part {
  const size = turned(rotation, part.block.size);
  return {
    block: { size: { x: Math.abs(size.x), y: Math.abs(size.y), z: Math.abs(size.z) } },
    datum: turnedFace(rotation, part.datum),
    requirements: part.requirements.map((one) => ({
      ...one,
      face: turnedFace(rotation, one.face),
      datum: turnedFace(rotation, one.datum),
    })),
    finished: part.finished.map((face) => turnedFace(rotation, face)),
  };
}
