import type { DoubtComponent } from '../statistics/effective-degrees';
import type { Outcome } from './outcome';

/** How fast a way of working cuts. */
export interface Rate extends DoubtComponent {
  /** Seconds or strokes that it took. */
  readonly amount: number;
  /** µm of wedge per second, or per stroke. */
  readonly value: number;
}

/**
 * The rate that `amount` seconds or strokes of work have shown.
 *
 * @throws RangeError where `amount` is not above 0.
 */
export function rateOf(outcome: Outcome, amount: number): Rate {
  if (!(amount > 0)) throw new RangeError('A rate needs an amount of work above 0');
  return { ...outcome, amount, value: outcome.wedge / amount, standard: outcome.standard / amount };
}
