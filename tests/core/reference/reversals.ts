/**
 * Reversal of a square: what is seen is m1 = S + W and m2 = S - W, S of the set-up and W of the
 * workpiece. Evans, Hocken and Estler, Self-calibration: reversal, redundancy, error separation and
 * absolute testing, CIRP Annals 45 (1996): the equations from memory, the numbers derived from them.
 * µm per 100 mm.
 */
export const SQUARE_REVERSAL = { m1: 1.8, m2: -4.2, W: 3, S: -1.2, standardOfEach: Math.SQRT1_2 };

/**
 * Four corners of one section by one comparator: m = c + r, the c adding up to 0. Derived; no
 * published example was found. With a standard uncertainty of 1 for each m.
 */
export const FOUR_CORNERS = {
  m: [6, -1, 7, -4],
  r: 2,
  c: [4, -3, 5, -6],
  standardOfCorner: Math.sqrt(3 / 4),
  standardOfR: 1 / 2,
  correlationOfCorners: -1 / 3,
} as const;
