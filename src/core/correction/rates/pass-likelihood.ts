import type { KnownPass } from './pass';
import type { ScatterShape } from './scatter-shape';

/*
 * What a pass says of its own rate. With r µm to come off, the readings' wedge w is normal about r
 * with the doubt u. That is taken in r itself, not in its logarithm: w may be less than its doubt,
 * or negative. As a function of x = ln(rate), r = amount·exp(x), it is laid out on places of x,
 * from where it dies out above to where it dies out below; or, where w is within 5 u of nothing,
 * to where it no longer changes: a rate however small is as likely as no cutting at all.
 */

/** The likelihood of a pass over x = ln(rate), over its own greatest value. */
export interface SpreadOut {
  readonly places: Float64Array;
  /** Likelihood at each place × the width of x that it stands for. */
  readonly weights: Float64Array;
  /** The likelihood everywhere below the first place. */
  readonly plateau: number;
}

/** Doubts to either side beyond which nothing is left: exp(-12.5). */
const REACH = 5;

/** Of the narrower of two bells: the trapezoidal rule on their product is then right to 1e-4. */
const STEP = 1;

/** The widest step of x: in x the fall of a likelihood from its plateau is about 1 wide. */
const WIDEST_STEP = 0.35;

/** By so much of itself a likelihood may still change below the first place, where it counts as level. */
const LEVEL = 0.01;

/** How many scales below the lowest typical rate the plateau begins, so that no bell ends within. */
const BELOW_ALL = 5;

/**
 * The likelihood of `pass`, laid out closely enough to be weighed with a scatter of `scale` about
 * any typical rate from exp(`lowest`) up.
 */
export function spreadOut(pass: KnownPass, scale: number, lowest: number): SpreadOut {
  const { amount, wedge, doubt } = pass;
  const from = lowestPlace(pass, scale, lowest);
  const to = Math.log(highestRemoval(pass) / amount);
  const relative = doubt / Math.max(wedge, doubt);
  const steps = Math.ceil((to - from) / Math.min(STEP * relative, STEP * scale, WIDEST_STEP));
  const width = (to - from) / steps;
  const places = new Float64Array(steps + 1);
  const weights = new Float64Array(steps + 1);
  const growth = Math.exp(width);
  let removal = amount * Math.exp(from);
  for (let index = 0; index <= steps; index += 1) {
    places[index] = from + index * width;
    const share = index === 0 || index === steps ? width / 2 : width;
    weights[index] = share * likelihood(removal, pass);
    removal *= growth;
  }
  return { places, weights, plateau: diesOutBelow(pass) ? 0 : likelihood(0, pass) };
}

/** The likelihood of the pass where the typical rate is exp(`middle`) and the scatter has `scale`. */
export function averaged(
  { places, weights, plateau }: SpreadOut,
  middle: number,
  scale: number,
  shape: ScatterShape,
): number {
  const perScale = 1 / scale;
  let total = 0;
  for (let index = 0; index < places.length; index += 1) {
    total += weights[index]! * shape.density((places[index]! - middle) * perScale);
  }
  const below = plateau === 0 ? 0 : plateau * shape.below((places[0]! - middle) * perScale);
  return total * perScale + below;
}

/** exp(-(removal - wedge)²/2u²), over the greatest that it can be for a removal of 0 or more. */
function likelihood(removal: number, { wedge, doubt }: KnownPass): number {
  const square = wedge > 0 ? (removal - wedge) ** 2 : removal * (removal - 2 * wedge);
  return Math.exp(-square / (2 * doubt * doubt));
}

function diesOutBelow({ wedge, doubt }: KnownPass): boolean {
  return wedge > REACH * doubt;
}

/** Where the likelihood has fallen by exp(-12.5) from its greatest, µm; free of cancellation. */
function highestRemoval({ wedge, doubt }: KnownPass): number {
  const reach = REACH * doubt;
  return wedge > 0 ? wedge + reach : (reach * reach) / (Math.hypot(wedge, reach) - wedge);
}

function lowestPlace(pass: KnownPass, scale: number, lowest: number): number {
  const { amount, wedge, doubt } = pass;
  if (diesOutBelow(pass)) {
    return Math.log(Math.max(wedge - REACH * doubt, wedge / 20) / amount);
  }
  const changesAt = (doubt * doubt) / Math.max(Math.abs(wedge), doubt);
  return Math.min(Math.log((LEVEL * changesAt) / amount), lowest - BELOW_ALL * scale);
}
