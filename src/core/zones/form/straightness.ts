import { type FormFit, leastSquaresFit } from './form-fit';
import { type MinimumZone, minimumZoneFit } from './minimum-zone-fit';
import { placesOf } from './places';
import { type LinePoint, numbersOnLine } from './points';

/** Straightness both ways; the minimum zone is never the wider. */
export interface Straightness {
  readonly leastSquares: FormFit;
  readonly minimumZone: MinimumZone;
}

/**
 * Straightness of a line of points from the least-squares line and from the minimum zone lines
 * (ISO 12780-1, LSLI and MZLI).
 *
 * One or two points have straightness 0. Points all at one place have no line: a level one is taken
 * and the width is the range of their deviations, as `spread` then says.
 *
 * @throws RangeError where there is no point, or a number is not finite.
 */
export function straightness(points: readonly LinePoint[]): Straightness {
  const numbers = numbersOnLine(points);
  const places = placesOf(numbers);
  const leastSquares = leastSquaresFit(places, numbers);
  return { leastSquares, minimumZone: minimumZoneFit(places, leastSquares) };
}

/** The least-squares line (LSLI). @throws RangeError as `straightness` does. */
export function leastSquaresLine(points: readonly LinePoint[]): FormFit {
  const numbers = numbersOnLine(points);
  return leastSquaresFit(placesOf(numbers), numbers);
}

/** The minimum zone lines (MZLI). @throws RangeError as `straightness` does. */
export function minimumZoneLine(points: readonly LinePoint[]): MinimumZone {
  return straightness(points).minimumZone;
}
