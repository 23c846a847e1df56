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
 * The numbers of points, each kind by itself and to be worked on in place. All are differences from
 * the first point: those are exact for points far from 0, where sums over them would not be.
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
  // One piece of memory in parts, for speed: with few points, to find it is much of the work. The
  // deviations become a result, and stand by themselves.
  const count = points.length;
  const memory = new ArrayBuffer(3 * count * Float64Array.BYTES_PER_ELEMENT);
  const part = (place: number) =>
    new Float64Array(memory, place * count * Float64Array.BYTES_PER_ELEMENT, count);
  return {
    first: { u: point.u, v, deviation: point.deviation },
    u: part(0),
    v: part(1),
    deviations: new Float64Array(count),
    ones: part(2).fill(1),
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
