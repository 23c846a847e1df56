import { solveLeastSquares } from '../../adjustment/least-squares';
import { type Axis, axesOf } from './axes';
import { leastSquaresPlane } from './flatness';
import {
  type FacePoint,
  type LinePoint,
  type Numbers,
  numbersOnFace,
  numbersOnLine,
} from './points';
import { leastSquaresLine } from './straightness';
import { rangeOf } from './vectors';

/** A reading of form on a line, or on a face where it has v too. */
export type FormPoint = LinePoint & Partial<FacePoint>;

/** How a face is bowed along one axis. */
export interface Bow {
  /** Rise of the middle over the ends, over the length that the points span, µm; - is a hollow. */
  readonly rise: number;
  /** Straight is no bow but what rounding makes; how sure the bow is the readings do not say. */
  readonly kind: 'crown' | 'hollow' | 'straight';
}

/** What the form is like. What the places of the points do not fix is undefined. */
export interface Form {
  readonly alongU: Bow | undefined;
  readonly alongV: Bow | undefined;
  /**
   * Mean height of the two corners where u and v are both low or both high, less that of the other
   * two, over the lengths that the points span, µm.
   */
  readonly twist: number | undefined;
  /** Places in the list of the points furthest above and below the least-squares plane. */
  readonly highest: number;
  readonly lowest: number;
}

/** Parts of the range of the deviations below which a bow is rounding. */
const NO_BOW = 1e-9;

/**
 * Crown or hollow, twist, and the high and low points. Bow and twist are those of the least-squares
 * surface of second order.
 *
 * @param points all with v, on a face, or all without, on a line.
 * @throws RangeError where there is no point, a number is not finite, or only some have v.
 */
export function formOf(points: readonly FormPoint[]): Form {
  const isLine = points.every(({ v }) => v === undefined);
  const onFace = points as readonly FacePoint[];
  const { residuals } = isLine ? leastSquaresLine(points) : leastSquaresPlane(onFace);
  const numbers = isLine ? numbersOnLine(points) : numbersOnFace(onFace);
  return { ...curvatureOf(numbers), ...extremesOf(residuals) };
}

function curvatureOf(numbers: Numbers): Pick<Form, 'alongU' | 'alongV' | 'twist'> {
  const { deviations, ones } = numbers;
  const { u, v } = axesOf(numbers);
  const product = (a: Axis, b: Axis) => a.values.map((value, i) => value * b.values[i]!);
  const terms = [ones, u.values, v.values, product(u, u), product(u, v), product(v, v)];
  const matrix = Float64Array.from(terms.flatMap((term) => [...term]));
  const fit = solveLeastSquares(matrix, deviations, ones);
  const height = (term: number) => fit.estimate(terms.map((_, j) => (j === term ? 1 : 0)))?.value;

  // Over a span of L, a·u² rises by a·(L/2)² from the middle to an end, and the corners of t·u·v
  // stand at ±t·(L/2)·(M/2).
  const [spanU, spanV] = [rangeOf(u.values), rangeOf(v.values)];
  const least = NO_BOW * rangeOf(deviations);
  const twist = height(4);
  return {
    alongU: bowOf(height(3), spanU, least),
    alongV: bowOf(height(5), spanV, least),
    twist: twist === undefined ? undefined : (twist * spanU * spanV) / 2,
  };
}

function bowOf(height: number | undefined, span: number, least: number): Bow | undefined {
  if (height === undefined) return undefined;
  const rise = -height * (span / 2) ** 2;
  if (Math.abs(rise) <= least) return { rise, kind: 'straight' };
  return { rise, kind: rise > 0 ? 'crown' : 'hollow' };
}

function extremesOf(residuals: Float64Array): Pick<Form, 'highest' | 'lowest'> {
  let [highest, lowest] = [0, 0];
  for (let i = 1; i < residuals.length; i += 1) {
    if (residuals[i]! > residuals[highest]!) highest = i;
    if (residuals[i]! < residuals[lowest]!) lowest = i;
  }
  return { highest, lowest };
}
