import type { Triple } from '../../../src/core/part/block';
import type { Face } from '../../../src/core/part/faces';
import {
  cross,
  dot,
  meetingPoint,
  type Plane,
  plus,
  times,
  unit,
  type Vector,
  wayTo,
} from './exact-vectors';
import type { Random } from './random';

/*
 * A block of six exact planes. Face f holds the points p with p·n = size/2 + (offset + slope·p)/1000,
 * n being its outward normal on the drawing; offset in µm, slopes in µm/mm, p in mm.
 */

export const NORMALS: Readonly<Record<Face, Vector>> = {
  right: [1, 0, 0],
  left: [-1, 0, 0],
  back: [0, 1, 0],
  front: [0, -1, 0],
  top: [0, 0, 1],
  bottom: [0, 0, -1],
};

export interface FaceErrors {
  readonly offset: number;
  /** Along x, y and z; 0 along the face's own axis. */
  readonly slopes: Vector;
}

export interface ExactBlock {
  readonly size: Triple;
  readonly errors: Readonly<Record<Face, FaceErrors>>;
}

/** A block whose faces slope by up to `slope` µm/mm and lie up to `offset` µm off the drawing. */
export function randomBlock(random: Random, size: Triple, slope: number, offset = 20): ExactBlock {
  const some = (normal: Vector): FaceErrors => {
    const along = (part: number) => (part === 0 ? random.between(-slope, slope) : 0);
    return {
      offset: random.between(-offset, offset),
      slopes: [along(normal[0]), along(normal[1]), along(normal[2])],
    };
  };
  const { right, left, back, front, top, bottom } = NORMALS;
  const errors = {
    right: some(right),
    left: some(left),
    back: some(back),
    front: some(front),
    top: some(top),
    bottom: some(bottom),
  };
  return { size, errors };
}

function planeOf(block: ExactBlock, face: Face): Plane {
  const { offset, slopes } = block.errors[face];
  const along = dot([block.size.x, block.size.y, block.size.z], NORMALS[face]);
  const normal = plus(NORMALS[face], times(slopes, -1 / 1000));
  const length = Math.sqrt(dot(normal, normal));
  const distance = Math.abs(along) / 2 + offset / 1000;
  return { normal: times(normal, 1 / length), distance: distance / length };
}

/** The interior angle between two faces that share an edge, less 90°, in mrad. */
export function exactOutOfSquare(block: ExactBlock, face: Face, base: Face): number {
  const cosine = dot(planeOf(block, face).normal, planeOf(block, base).normal);
  return Math.asin(cosine) * 1000;
}

/**
 * The plane of `face` as the plate sees it: z up from the plate, which `base` lies in; x the way
 * that `face` looks, but for a `yaw` about z, rad; the origin under the middle of the block.
 */
export function standOn(block: ExactBlock, base: Face, face: Face, yaw: number): Plane {
  const { normal: down, distance } = planeOf(block, base);
  const up = times(down, -1);
  const looks = NORMALS[face];
  const ahead = unit(plus(looks, times(up, -dot(looks, up))));
  const across = cross(up, ahead);
  const x = plus(times(ahead, Math.cos(yaw)), times(across, Math.sin(yaw)));
  const origin = times(down, distance);
  const plane = planeOf(block, face);
  return {
    normal: [dot(plane.normal, x), dot(plane.normal, cross(up, x)), dot(plane.normal, up)],
    distance: plane.distance - dot(plane.normal, origin),
  };
}

/** Thickness, mm, by a micrometer whose anvil sits flat on the face opposite to `face`, at `point`. */
export function thickness(block: ExactBlock, face: Face, opposite: Face, point: Vector): number {
  const anvil = planeOf(block, opposite);
  const inwards = NORMALS[face];
  const touch = plus(point, times(inwards, wayTo(anvil, point, inwards)));
  return wayTo(planeOf(block, face), touch, times(anvil.normal, -1));
}

/** The corner where `face` meets two of its neighbours. */
export function cornerBetween(
  block: ExactBlock,
  face: Face,
  [one, other]: readonly [Face, Face],
): Vector {
  return meetingPoint(planeOf(block, face), planeOf(block, one), planeOf(block, other));
}
