import { hashOfNumbers } from '../statistics/hash';
import { normalBetween } from '../statistics/normal';
import { fillWithNormals } from '../statistics/normal-pairs';
import { randomFrom } from '../statistics/random';
import { zoneWidthsAt } from '../zones/form/flatness';
import type { FacePoint } from '../zones/form/points';

/*
 * Noise at any place can widen a minimum zone, and hardly ever narrows it: the width of noisy readings
 * lies above the truth, with many places by several standard uncertainties. So the probability that a
 * face is flat within its tolerance has two halves.
 *
 * The width found is within the tolerance: the true width may be more. With the shares s of the places
 * that hold the true zone, the width of the readings is at least Σ±s·reading, whatever all other
 * places show, as the shares are the proof that no zone is less wide. That sum has the true width for
 * its mean and u = √Σ(s·u)² for its standard uncertainty, so that the true width is above W + z·u in no
 * more than the part Φ(-z) of inspections, but that the shares are those of the readings.
 *
 * The width found is above the tolerance: noise may have made it. Of all forms within the tolerance
 * the one nearest to the readings is taken (they are cut off at two planes so far apart), and it is
 * simulated how often readings of it would come out as wide as these.
 *
 * Of 1000 simulated faces exactly at the limit, with 9 and with 25 places, up to 3 % were called in,
 * and 2 to 6 % out at 95 %: 9 % with one high place, and up to 13 % with one even crown, where whole
 * rows are equally high. By the first half alone up to 90 % of them would have been called out.
 */

/** A map of a face that is wider than its tolerance. */
export interface WideMap {
  /** More than three places that spread over a face, with their deviations from the middle plane of the zone. */
  readonly points: readonly FacePoint[];
  /** Standard uncertainty of each by itself, µm, in the same order. */
  readonly standards: readonly number[];
  /** µm */
  readonly width: number;
  /** µm, at least 0 and less than the width. */
  readonly tolerance: number;
}

/** So many draws tell a probability near 5 % to 0.002. */
export const WIDE_MAP_DRAWS = 10_000;

/** That noise may have made the width is no proof that the face is in. */
const NO_PROOF = 0.5;

/**
 * Probability that the true flatness is no more than `tolerance`, from the width of the minimum zone
 * and its standard uncertainty, all in µm (JCGM 106:2012, 7; of first order, GUM 5.1.2). Where the
 * width is above the tolerance this is too little, and `wideMapDraws` tells how much.
 */
export function probabilityOfFlatness(width: number, standard: number, tolerance: number): number {
  return normalBetween(Number.NEGATIVE_INFINITY, tolerance, width, standard);
}

/**
 * How often a face that is just within the tolerance would come out as wide as the map or wider. What
 * is returned simulates so many maps more, with normal, independent readings, and gives the part of
 * all so far, 0.5 at the most. The same map gives the same answer to the last digit.
 *
 * @throws RangeError as `flatness` does.
 */
export function wideMapDraws(map: WideMap): (count: number) => number {
  const { points, standards, width, tolerance } = map;
  const [high, low] = [tolerance / 2, -tolerance / 2];
  const within = points.map(({ deviation }) => Math.min(high, Math.max(low, deviation)));
  const random = randomFrom(seedOf(map));
  const widthOf = zoneWidthsAt(points);
  const readings = new Float64Array(points.length);
  let draws = 0;
  let asWide = 0;
  return (count) => {
    for (const end = draws + count; draws < end; draws += 1) {
      fillWithNormals(readings, random);
      for (let i = 0; i < readings.length; i += 1) {
        readings[i] = within[i]! + standards[i]! * readings[i]!;
      }
      if (widthOf(readings) >= width) asWide += 1;
    }
    return Math.min(NO_PROOF, asWide / draws);
  };
}

/** The tolerance is left out, so that one is held against the same draws as another. */
function seedOf({ points, standards }: WideMap): number {
  const numbers = points.flatMap(({ u, v, deviation }) => [u, v, deviation]);
  return hashOfNumbers([...numbers, ...standards]);
}
