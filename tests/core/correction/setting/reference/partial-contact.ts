/**
 * A rigid footing B × L on an even bed under a load P that stands e off the middle along B, beyond
 * the kern: 3·(B/2 - e) of B is pressed, with 2P/(3L·(B/2 - e)) at its edge. The rule found in
 * public papers on footings; the numbers follow from it. Force and moment balance:
 * ½·133.3333·1.5 = 100, and the triangle's centroid is 1.5/3 = B/2 - e from the edge.
 */
export const PARTIAL_CONTACT = {
  P: 100,
  B: 2,
  L: 1,
  e: 0.5,
  greatest: 133.3333,
  contact: 1.5,
} as const;
