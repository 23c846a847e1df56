import { columnsOf } from './columns';
import { type FormFit, kept, leastSquaresFit } from './form-fit';
import { minimaxFit } from './minimax/minimax-fit';
import { type MinimumZone, minimumZoneFit } from './minimum-zone-fit';
import { type Places, placesOf } from './places';
import { type FacePoint, numbersOnFace } from './points';

/** Flatness both ways; the minimum zone is never the wider. */
export interface Flatness {
  readonly leastSquares: FormFit;
  readonly minimumZone: MinimumZone;
}

/**
 * Flatness of a face from the least-squares plane and from the minimum zone planes (ISO 12781-1,
 * LSPL and MZPL).
 *
 * Up to three points that are not on one line have flatness 0. Points on one line in the face have
 * the straightness of that line for flatness, with the planes level across it; points all at one
 * place have the range of their deviations. `spread` says so.
 *
 * @throws RangeError where there is no point, or a number is not finite.
 */
export function flatness(points: readonly FacePoint[]): Flatness {
  const [places, fit] = fitted(points);
  return { leastSquares: kept(fit), minimumZone: minimumZoneFit(places, fit) };
}

/** The least-squares plane (LSPL). @throws RangeError as `flatness` does. */
export function leastSquaresPlane(points: readonly FacePoint[]): FormFit {
  return kept(fitted(points)[1]);
}

/** The minimum zone planes (MZPL). @throws RangeError as `flatness` does. */
export function minimumZonePlane(points: readonly FacePoint[]): MinimumZone {
  return minimumZoneFit(...fitted(points));
}

/**
 * What gives the width of the minimum zone, µm, for any deviations at the places of `points`, where
 * these spread over a face and are more than three: for many draws, with the places worked out once.
 *
 * @throws RangeError as `flatness` does.
 */
export function zoneWidthsAt(points: readonly FacePoint[]): (deviations: Float64Array) => number {
  const { a, b, c } = placesOf(numbersOnFace(points)).columns;
  // They stand in lent memory.
  const columns = columnsOf([a.slice(), b.slice(), c.slice()]);
  return (deviations) => 2 * minimaxFit(columns, deviations).deviation;
}

/** The places of the points and the least-squares fit, in lent memory. */
function fitted(points: readonly FacePoint[]): [Places, FormFit] {
  const numbers = numbersOnFace(points);
  const places = placesOf(numbers);
  return [places, leastSquaresFit(places, numbers)];
}
