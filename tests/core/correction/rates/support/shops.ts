import type { Pass } from '../../../../../src/core/correction/rates/pass';
import type { RatePrior } from '../../../../../src/core/correction/rates/prior';
import { priorRate } from '../../../../../src/core/correction/rates/prior';
import type { Random } from '../../../../../src/core/statistics/random';

export const USUAL = priorRate({ per: 'second', material: 'aluminium 6061', grit: 320 });

/** A pass whose wedge, µm, is known within `standard` µm for certain. */
export function pass(amount: number, wedge: number, standard = 0.5): Pass {
  return { amount, wedge, standard, degreesOfFreedom: Number.POSITIVE_INFINITY };
}

/** A shop with a rate and a scatter of its own, which nobody knows. */
export interface Shop {
  readonly rate: number;
  /** The rate of its next pass. */
  next(): number;
}

/** A shop as `prior` has it. */
export function shopFrom({ median, logStandard, scatter }: RatePrior, random: Random): Shop {
  const rate = median * Math.exp(logStandard * random.normal());
  const scale = scatter[0] * (scatter[1] / scatter[0]) ** random.even();
  return { rate, next: () => rate * Math.exp(scale * random.student(4)) };
}

/** `count` passes that agree about as well as passes do: 0.3 µm/s within a fifth. */
export function goodPasses(count: number): readonly Pass[] {
  return Array.from({ length: count }, (_, index) =>
    pass(20, 6 * Math.exp(0.2 * Math.sin(2.3 * index))),
  );
}
