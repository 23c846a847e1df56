import { gaussLegendre } from '../../statistics/gauss-legendre';
import { polynomialThrough } from '../../statistics/polynomial-through';
import type { KnownPass } from './pass';
import { type Ends, evenPlaces, posteriorBox } from './posterior-box';
import { type Logarithms, logarithmsOf } from './posterior-logarithm';
import type { RatePrior } from './prior';

/*
 * The posterior of the typical rate and the scatter on a grid over m = ln(rate) and y = ln(scale).
 * In m it dies out at both ends, where even steps are as good as any rule; in y it may stop short
 * at the ends of the prior, so there the rule of Gauss and Legendre is taken.
 */

/** How many places a grid has. */
export interface Fineness {
  readonly middles: number;
  readonly scales: number;
}

const USUAL_FINENESS: Fineness = { middles: 65, scales: 16 };

/** Up to so many passes each place is reckoned; the posterior may have any shape. */
const FEW = 12;

/** After more passes its logarithm is so smooth that it is filled in from so many places. */
const SAMPLED: Fineness = { middles: 11, scales: 8 };

/** The posterior on a grid. */
export interface Posterior {
  /** Logarithms of typical rates, evenly spaced. */
  readonly middles: readonly number[];
  readonly scales: readonly number[];
  /** One row for each scale; all of them add up to 1. */
  readonly weights: readonly (readonly number[])[];
}

/**
 * The posterior after `passes`, in any order.
 *
 * @param fineness to reckon every place of a grid of one's own
 */
export function posteriorOf(
  passes: readonly KnownPass[],
  prior: RatePrior,
  fineness?: Fineness,
): Posterior {
  const box = posteriorBox(passes, prior);
  const { middles, scales } = fineness ?? USUAL_FINENESS;
  const exact = logarithmsOf(passes, prior);
  const isSmooth =
    fineness === undefined && passes.length > FEW && box.logScale[0] < box.logScale[1];
  const logarithms = isSmooth ? filledIn(exact, box.middle, box.logScale) : exact;
  return normalised(evenPlaces(box.middle, middles), placesOver(box.logScale, scales), logarithms);
}

/** Places in rising order with the weights of the quadrature. */
interface Weighted {
  readonly places: readonly number[];
  readonly weights: readonly number[];
}

function placesOver([low, high]: Ends, count: number): Weighted {
  if (high === low) return { places: [low], weights: [1] };
  const { places, weights } = gaussLegendre(count);
  const half = (high - low) / 2;
  return { places: places.map((place) => low + half * (1 + place)), weights };
}

/** `exact` by polynomials through a few places of a box. */
function filledIn(exact: Logarithms, middle: Ends, logScale: Ends): Logarithms {
  const middles = placesOver(middle, SAMPLED.middles).places;
  const logScales = placesOver(logScale, SAMPLED.scales).places;
  const rows = logScales.map((place) => exact(Math.exp(place), middles));
  const alongMiddles = polynomialThrough(middles);
  const alongScales = polynomialThrough(logScales);
  return (scale, at) => {
    const row = middles.map((_, index) =>
      alongScales(
        rows.map((one) => one[index]!),
        Math.log(scale),
      ),
    );
    return at.map((one) => alongMiddles(row, one));
  };
}

function normalised(
  middles: readonly number[],
  { places, weights }: Weighted,
  logarithms: Logarithms,
): Posterior {
  const scales = places.map(Math.exp);
  const rows = scales.map((scale) => logarithms(scale, middles));
  const greatest = Math.max(...rows.flat());
  const parts = rows.map((row, index) =>
    row.map((one) => weights[index]! * Math.exp(one - greatest)),
  );
  const total = parts.flat().reduce((sum, part) => sum + part, 0);
  return { middles, scales, weights: parts.map((row) => row.map((part) => part / total)) };
}
