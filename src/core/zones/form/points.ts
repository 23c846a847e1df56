import { lend } from './lent-memory';

/** A reading of form on a line. */
export interface LinePoint {
  /** Place along the line, mm. */
  readonly u: number;
  /** µm, + where there is more material. */
  readonly deviation: number;
}

/** A reading of form on a face. */
export interface FacePoint extends LinePoint {
  /** Place across, mm, square to u. */
  readonly v: number;
}

/**
 * The numbers of points, each kind by itself, in lent memory and to be worked on in place. All are
 * differences from the first point: those are exact for points far from 0, where sums over them
 * would not be.
 */
export interface Numbers {
  readonly first: FacePoint;
  readonly u: Float64Array;
  /** All 0 on a line. */
  readonly v: Float64Array;
  readonly deviations: Float64Array;
  readonly ones: Float64Array;
}

/** @throws RangeError where there is no point, or a number is not finite. */
export function numbersOnLine(points: readonly LinePoint[]): Numbers {
  const numbers = room(points, 0);
  const { first, u, deviations } = numbers;
  for (let i = 0; i < u.length; i += 1) {
    const point = points[i]!;
    u[i] = point.u - first.u;
    deviations[i] = point.deviation - first.deviation;
    if (!Number.isFinite(u[i]! + deviations[i]!)) refuse(i, ['u', 'deviation'], point);
  }
  return numbers;
}

/** @throws RangeError where there is no point, or a number is not finite. */
export function numbersOnFace(points: readonly FacePoint[]): Numbers {
  const numbers = room(points, points[0]?.v ?? Number.NaN);
  const { first, u, v, deviations } = numbers;
  for (let i = 0; i < u.length; i += 1) {
    const point = points[i]!;
    u[i] = point.u - first.u;
    v[i] = point.v - first.v;
    deviations[i] = point.deviation - first.deviation;
    if (!Number.isFinite(u[i]! + v[i]! + deviations[i]!)) {
      refuse(i, ['u', 'v', 'deviation'], point);
    }
  }
  return numbers;
}

function room(points: readonly LinePoint[], v: number): Numbers {
  const point = points[0];
  if (point === undefined) throw new RangeError('There is no point');
  const count = points.length;
  const memory = lend(4 * count);
  const part = (place: number) => memory.subarray(place * count, (place + 1) * count);
  return {
    first: { u: point.u, v, deviation: point.deviation },
    u: part(0),
    v: part(1).fill(0),
    deviations: part(2),
    ones: part(3).fill(1),
  };
}

function refuse(
  index: number,
  names: readonly (keyof FacePoint)[],
  point: Partial<FacePoint>,
): never {
  const name = names.find((one) => !Number.isFinite(point[one]));
  if (name !== undefined) throw new RangeError(`Point ${index}: ${name} is not finite`);
  throw new RangeError(`Point ${index} is too far from the first`);
}
