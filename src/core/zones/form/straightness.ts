import { type FormFit, kept, leastSquaresFit } from './form-fit';
import { type MinimumZone, minimumZoneFit } from './minimum-zone-fit';
import { type Places, placesOf } from './places';
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
  const [places, fit] = fitted(points);
  return { leastSquares: kept(fit), minimumZone: minimumZoneFit(places, fit) };
}

/** The least-squares line (LSLI). @throws RangeError as `straightness` does. */
export function leastSquaresLine(points: readonly LinePoint[]): FormFit {
  return kept(fitted(points)[1]);
}

/** The minimum zone lines (MZLI). @throws RangeError as `straightness` does. */
export function minimumZoneLine(points: readonly LinePoint[]): MinimumZone {
  return minimumZoneFit(...fitted(points));
}

/** The places of the points and the least-squares fit, in lent memory. */
function fitted(points: readonly LinePoint[]): [Places, FormFit] {
  const numbers = numbersOnLine(points);
  const places = placesOf(numbers);
  return [places, leastSquaresFit(places, numbers)];
}
