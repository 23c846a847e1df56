/** Vectors of the exact plane geometry, written apart from the core so that neither leans on the other. */
export type Vector = readonly [number, number, number];

/** The points q with normal·q = distance; the normal has length 1 and points out of the block. */
export interface Plane {
  readonly normal: Vector;
  readonly distance: number;
}

export function dot(a: Vector, b: Vector): number {
  return a[0] * b[0] + a[1] * b[1] + a[2] * b[2];
}

export function cross(a: Vector, b: Vector): Vector {
  return [a[1] * b[2] - a[2] * b[1], a[2] * b[0] - a[0] * b[2], a[0] * b[1] - a[1] * b[0]];
}

export function times(a: Vector, factor: number): Vector {
  return [a[0] * factor, a[1] * factor, a[2] * factor];
}

export function plus(a: Vector, b: Vector): Vector {
  return [a[0] + b[0], a[1] + b[1], a[2] + b[2]];
}

export function unit(a: Vector): Vector {
  return times(a, 1 / Math.sqrt(dot(a, a)));
}

/** How far one has to go from `start` along `direction` to reach `plane`. */
export function wayTo(plane: Plane, start: Vector, direction: Vector): number {
  return (plane.distance - dot(plane.normal, start)) / dot(plane.normal, direction);
}

/** The point that lies in all three planes, by Cramer's rule. */
export function meetingPoint(a: Plane, b: Plane, c: Plane): Vector {
  const volume = dot(a.normal, cross(b.normal, c.normal));
  const total = plus(
    plus(
      times(cross(b.normal, c.normal), a.distance),
      times(cross(c.normal, a.normal), b.distance),
    ),
    times(cross(a.normal, b.normal), c.distance),
  );
  return times(total, 1 / volume);
}
