/**
 * A rigid footing B × L on an even bed under a load P that stands e off the middle along B:
 * pressure at the edges q = P/(B·L)·(1 ± 6e/B), all of it pressed while |e| ≤ B/6 and, for two
 * directions, |e|/B + |e'|/L ≤ 1/6. The rule found in public papers on footings; the numbers follow
 * from it.
 */
export const ECCENTRIC_LOADS = [
  { P: 100, B: 2, L: 1, e: 0.2, high: 80, low: 20 },
  { P: 100, B: 2, L: 1, e: 1 / 3, high: 100, low: 0 },
] as const;
