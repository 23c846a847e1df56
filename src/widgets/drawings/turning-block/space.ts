import type { Triple } from '../../../core/part/block';
import { AXES } from '../../../core/part/faces';

/** A plane in space: the points p with normal · p = distance. What lies behind it belongs to the block. */
export interface Plane {
  /** Points out of the block; of any length. */
  readonly normal: Triple;
  readonly distance: number;
}

export function dot(a: Triple, b: Triple): number {
  return a.x * b.x + a.y * b.y + a.z * b.z;
}

export function cross(a: Triple, b: Triple): Triple {
  return {
    x: a.y * b.z - a.z * b.y,
    y: a.z * b.x - a.x * b.z,
    z: a.x * b.y - a.y * b.x,
  };
}

/** `a` + `share` · (`b` − `a`). */
function between(a: Triple, b: Triple, share: number): Triple {
  return {
    x: a.x + share * (b.x - a.x),
    y: a.y + share * (b.y - a.y),
    z: a.z + share * (b.z - a.z),
  };
}

/** The middle of some points. */
export function middleOf(points: readonly Triple[]): Triple {
  const mean = (values: readonly number[]) =>
    values.reduce((sum, value) => sum + value, 0) / values.length;
  return {
    x: mean(points.map(({ x }) => x)),
    y: mean(points.map(({ y }) => y)),
    z: mean(points.map(({ z }) => z)),
  };
}

/** How far `point` is out of the plane, in lengths of its normal: negative behind it. */
export function outOf(plane: Plane, point: Triple): number {
  return dot(plane.normal, point) - plane.distance;
}

/** The point that three planes share; they are those of three faces that meet, so there is one. */
export function meetingPoint(a: Plane, b: Plane, c: Plane): Triple {
  const [bc, ca, ab] = [
    cross(b.normal, c.normal),
    cross(c.normal, a.normal),
    cross(a.normal, b.normal),
  ];
  const volume = dot(a.normal, bc);
  const [x, y, z] = AXES.map(
    (axis) => (a.distance * bc[axis] + b.distance * ca[axis] + c.distance * ab[axis]) / volume,
  );
  return { x: x ?? 0, y: y ?? 0, z: z ?? 0 };
}

/** The part of a flat convex outline that is out of the plane; empty where none of it is. */
export function partOutOf(plane: Plane, outline: readonly Triple[]): readonly Triple[] {
  const part = outline.flatMap((point, index) => {
    const next = outline[(index + 1) % outline.length] ?? point;
    const [here, there] = [outOf(plane, point), outOf(plane, next)];
    const kept = here >= 0 ? [point] : [];
    if (here >= 0 === there >= 0) return kept;
    return [...kept, between(point, next, here / (here - there))];
  });
  return part.length < 3 ? [] : part;
}

/** The line in which the plane cuts a flat convex outline, if it does. */
export function cutBy(
  plane: Plane,
  outline: readonly Triple[],
): readonly [Triple, Triple] | undefined {
  const [from, to] = outline.flatMap((point, index) => {
    const next = outline[(index + 1) % outline.length] ?? point;
    const [here, there] = [outOf(plane, point), outOf(plane, next)];
    return here >= 0 === there >= 0 ? [] : [between(point, next, here / (here - there))];
  });
  return from && to && [from, to];
}
