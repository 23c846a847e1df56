import type { KnownPass } from './pass';
import { averaged, type SpreadOut, spreadOut } from './pass-likelihood';
import type { RatePrior } from './prior';
import { shapeOf } from './scatter-shape';

/**
 * Logarithm of the posterior, but for a constant, at each of `middles`, rising logarithms of the
 * typical rate, with one scale of the scatter.
 */
export type Logarithms = (scale: number, middles: readonly number[]) => readonly number[];

/** Where not all need be known: what lies further below the greatest is only known to lie so low. */
export interface Sight {
  readonly depth: number;
  /** Where the greatest is looked for first. */
  readonly best: number;
}

const EVERYTHING: Sight = { depth: Number.POSITIVE_INFINITY, best: 0 };

/** The logarithms of the posterior after `passes`. */
export function logarithmsOf(
  passes: readonly KnownPass[],
  { median, logStandard, tails }: RatePrior,
  { depth, best }: Sight = EVERYTHING,
): Logarithms {
  const shape = shapeOf(tails);
  let greatest = Number.NEGATIVE_INFINITY;
  return (scale, middles) => {
    const spread: SpreadOut[] = [];
    const at = (middle: number) => {
      let total = -(((middle - Math.log(median)) / logStandard) ** 2) / 2;
      // No likelihood is above 1: the total only falls.
      for (let index = 0; index < passes.length && total >= greatest - depth; index += 1) {
        spread[index] ??= spreadOut(passes[index]!, scale, middles[0]!);
        total += Math.log(averaged(spread[index]!, middle, scale, shape));
      }
      greatest = Math.max(greatest, total);
      return total;
    };
    const nearestFirst = middles
      .map((middle, index) => ({ middle, index }))
      .sort((one, other) => Math.abs(one.middle - best) - Math.abs(other.middle - best));
    const result: number[] = new Array(middles.length);
    for (const { middle, index } of nearestFirst) result[index] = at(middle);
    return result;
  };
}
