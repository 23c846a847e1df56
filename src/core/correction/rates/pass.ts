import { expanded } from '../../statistics/coverage';
import type { Outcome } from '../outcome';

/** One bout of work with what it took off, as read before and after. */
export interface Pass extends Outcome {
  /** Seconds or strokes, above 0. */
  readonly amount: number;
}

/** A pass with its doubt made normal. */
export interface KnownPass {
  readonly amount: number;
  /** µm; below 0 where the readings have it the wrong way. */
  readonly wedge: number;
  /** Standard uncertainty of the wedge, µm, above 0. */
  readonly doubt: number;
}

/** No readings at the plate know a wedge better than this, µm; without a doubt nothing could be weighed. */
const LEAST_DOUBT = 0.01;

/**
 * `pass` with a normal doubt that covers as much as its own does: an uncertainty known from few
 * repeats is widened by Student's factor (GUM G.3).
 *
 * @throws RangeError where the amount is not above 0, the doubt is none, or a number is not finite.
 */
export function knownPass(pass: Pass): KnownPass {
  const { amount, wedge, standard, degreesOfFreedom } = pass;
  if (!(amount > 0 && amount < Number.POSITIVE_INFINITY)) {
    throw new RangeError('A pass needs an amount of work above 0');
  }
  if (!Number.isFinite(wedge)) throw new RangeError('The wedge is not finite');
  if (!(standard >= 0 && standard < Number.POSITIVE_INFINITY && degreesOfFreedom >= 1)) {
    throw new RangeError('The doubt of a wedge is 0 or more, with 1 degree of freedom or more');
  }
  const certain = expanded({ standard: 1, degreesOfFreedom: Number.POSITIVE_INFINITY });
  return { amount, wedge, doubt: Math.max(LEAST_DOUBT, expanded(pass) / certain) };
}
