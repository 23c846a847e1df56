import { type Factors, productsWith, takeOff } from './columns';
import type { InFace, Places, Spread } from './places';
import type { Numbers } from './points';
import { dot, rangeOf } from './vectors';

/** A line or a plane at height + slopes·(place - middle); a line has no slope along v. */
export interface FittedPlane {
  /** Mean place of the points, mm; v is 0 on a line. */
  readonly middle: InFace;
  /** Height at the middle, µm. */
  readonly height: number;
  /** µm/mm. */
  readonly slopes: InFace;
}

/** Points held against a line or plane. */
export interface FormFit {
  /** Greatest residual less the least, µm: the straightness or flatness. */
  readonly width: number;
  readonly plane: FittedPlane;
  /**
   * Deviation less the height of the plane, µm, in the order of the points. It is taken along the
   * deviation, not square to the plane: at slopes of µm/mm that is the same to a part in 10⁶.
   */
  readonly residuals: Float64Array;
  /** What the points spread over: where it is less than asked for, the slopes left open are 0. */
  readonly spread: Spread;
}

/** The least-squares fit of the deviations, which become its residuals, still in lent memory. */
export function leastSquaresFit(places: Places, { first, deviations }: Numbers): FormFit {
  const { columns } = places;
  const a = dot(columns.a, columns.a);
  const b = columns.count > 1 ? dot(columns.b, columns.b) : Number.POSITIVE_INFINITY;
  const c = columns.count > 2 ? dot(columns.c, columns.c) : Number.POSITIVE_INFINITY;
  let factors: Factors = { a: 0, b: 0, c: 0 };
  // The columns are square to each other but for rounding, which the second round takes out.
  for (let round = 0; round < 2; round += 1) {
    const products = productsWith(columns, deviations);
    const part = { a: products.a / a, b: products.b / b, c: products.c / c };
    takeOff(columns, part, deviations, deviations);
    factors = { a: factors.a + part.a, b: factors.b + part.b, c: factors.c + part.c };
  }
  if (isExact(places)) deviations.fill(0);
  return {
    width: rangeOf(deviations),
    plane: raised(planeOf(places, factors), first.deviation),
    residuals: deviations,
    spread: places.spread,
  };
}

/** `fit` with residuals of its own. */
export function kept<Fit extends FormFit>(fit: Fit): Fit {
  return { ...fit, residuals: fit.residuals.slice() };
}

/** As many points as unknowns: any deviations are met in full. */
export function isExact({ columns }: Places): boolean {
  return columns.a.length === columns.count;
}

/** The plane with these factors of the columns of `places`, µm. */
export function planeOf({ gradients, middle }: Places, { a, b, c }: Factors): FittedPlane {
  const [first, second] = gradients;
  const slopes = { u: b * first.u + c * second.u, v: b * first.v + c * second.v };
  return { middle, height: a, slopes };
}

function raised(plane: FittedPlane, height: number): FittedPlane {
  return { ...plane, height: plane.height + height };
}
