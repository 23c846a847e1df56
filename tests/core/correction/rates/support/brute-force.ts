import type { LearnedRate } from '../../../../../src/core/correction/rates/learn-rate';
import type { Pass } from '../../../../../src/core/correction/rates/pass';
import type { RatePrior } from '../../../../../src/core/correction/rates/prior';

/*
 * The same posterior without the core's devices, on three fixed grids: midpoints over the
 * logarithms of the typical rate and of the rate of a single pass, Simpson's rule over that of the
 * scale, which stops short at its ends.
 */

const STEP = 0.04;

/** Steps from one end of each grid to the other, and from the lower end of one to that of the other. */
const TYPICALS = 300;
const SINGLES = 2100;
const LOWER = 1550;

const SCALES = 24;

const typicals = placesFrom(-8, TYPICALS);
const singles = placesFrom(-8 - LOWER * STEP, SINGLES);

function placesFrom(start: number, count: number): readonly number[] {
  return Array.from({ length: count }, (_, index) => start + (index + 0.5) * STEP);
}

/** Places with the weights of Simpson's rule. */
function bySimpson(from: number, to: number) {
  return Array.from({ length: SCALES + 1 }, (_, index) => ({
    place: from + ((to - from) * index) / SCALES,
    share: index === 0 || index === SCALES ? 1 : 2 + 2 * (index % 2),
  }));
}

/**
 * Student's density with 4 degrees of freedom and a scale, for every distance there can be between
 * a single rate and a typical one: A&S 26.7.1 with Γ(5/2)/(Γ(2)·√(4π)) = 3/8.
 */
function bell(scale: number): readonly number[] {
  return Array.from({ length: SINGLES + TYPICALS }, (_, index) => {
    const z = ((index - LOWER - TYPICALS) * STEP) / scale;
    return 0.375 / Math.sqrt((1 + (z * z) / 4) ** 5) / scale;
  });
}

/** The 90 % intervals of `passes`, whose doubt is certain. */
export function byBruteForce(
  passes: readonly Pass[],
  { median, logStandard, scatter }: RatePrior,
): Pick<LearnedRate, 'typical' | 'next'> {
  const likelihoods = passes.map(({ amount, wedge, standard }) =>
    singles.map((x) => Math.exp(-(((wedge - amount * Math.exp(x)) / standard) ** 2) / 2)),
  );
  const ofTypical = new Array<number>(TYPICALS).fill(0);
  const ofNext = new Array<number>(SINGLES).fill(0);
  for (const { place, share } of bySimpson(Math.log(scatter[0]), Math.log(scatter[1]))) {
    const density = bell(Math.exp(place));
    typicals.forEach((typical, at) => {
      const off = (typical - Math.log(median)) / logStandard;
      let weight = share * Math.exp((-off * off) / 2);
      for (const likelihood of likelihoods) {
        let total = 0;
        for (let index = 0; index < SINGLES; index += 1) {
          total += likelihood[index]! * density[index - at + TYPICALS]!;
        }
        weight *= total;
      }
      ofTypical[at]! += weight;
      for (let index = 0; index < SINGLES; index += 1) {
        ofNext[index]! += weight * density[index - at + TYPICALS]!;
      }
    });
  }
  return { typical: rangeOf(typicals, ofTypical), next: rangeOf(singles, ofNext) };
}

function rangeOf(places: readonly number[], weights: readonly number[]) {
  const whole = weights.reduce((total, weight) => total + weight, 0);
  const quantile = (part: number) => {
    let left = part * whole;
    const at = weights.findIndex((weight) => {
      left -= weight;
      return left < 0;
    });
    return Math.exp(places[at]! + STEP * (0.5 + left / weights[at]!));
  };
  return { low: quantile(0.05), median: quantile(0.5), high: quantile(0.95) };
}
