import { type FittedPlane, type FormFit, isExact, kept, planeOf } from './form-fit';
import { type MinimaxFit, minimaxFit } from './minimax/minimax-fit';
import type { Places } from './places';
import { rangeOf } from './vectors';

/** A point that holds the zone. */
export interface Contact {
  /** Its place in the list of points. */
  readonly index: number;
  /** Its part of the hold on its side, above 0; they come to 1 on each side. */
  readonly share: number;
}

/**
 * The least zone, and the proof that no zone is less wide: the mean place of the upper contacts,
 * weighted by their shares, is that of the lower ones, and the two mean deviations are `width`
 * apart. Tilting any way brings the two means no closer, and every zone has to hold both.
 *
 * Points that touch the zone without being needed to hold it are not named.
 */
export interface MinimumZone extends FormFit {
  readonly upper: readonly Contact[];
  readonly lower: readonly Contact[];
}

/**
 * The minimum zone, from the least-squares fit so that a tilt however large costs no digits of the
 * form: the minimax fit, whose greatest error is half the width. The plane lies in the middle of
 * the zone. Where several planes have the least width, it is one of them.
 */
export function minimumZoneFit(places: Places, leastSquares: FormFit): MinimumZone {
  if (isExact(places)) {
    const only = [{ index: 0, share: 1 }];
    return { ...kept(leastSquares), upper: only, lower: only };
  }
  const fit = minimaxFit(places.columns, leastSquares.residuals);
  return {
    width: rangeOf(fit.residuals),
    plane: sumOf(leastSquares.plane, planeOf(places, fit.factors)),
    residuals: fit.residuals,
    spread: places.spread,
    upper: contactsOf(fit, 1),
    lower: contactsOf(fit, -1),
  };
}

function sumOf(one: FittedPlane, change: FittedPlane): FittedPlane {
  return {
    middle: one.middle,
    height: one.height + change.height,
    slopes: { u: one.slopes.u + change.slopes.u, v: one.slopes.v + change.slopes.v },
  };
}

function contactsOf({ contacts }: MinimaxFit, side: 1 | -1): readonly Contact[] {
  const held = contacts.filter(({ multiplier }) => side * multiplier > 0);
  let total = 0;
  for (const { multiplier } of held) total += multiplier;
  return held.map(({ index, multiplier }) => ({ index, share: multiplier / total }));
}
