/**
 * Adjustment of a levelling network and its data snooping: Z. Siki, tutorial level_net,
 * OSGeoLabBp/tutorials. Data and printed results found. Standard uncertainty of an observation:
 * 0.7 mm for each km, the square being the tutorial's weight. Point 4 is held fixed.
 */
export const LEVEL_NET = {
  /** From, to, difference in height in m, length in km. */
  observations: [
    [1, 2, -0.749, 1.1],
    [1, 3, -1.274, 1.8],
    [1, 4, -2.89, 1.4],
    [2, 3, -0.53, 1.5],
    [2, 4, -2.141, 1.9],
    [3, 4, -1.614, 0.9],
  ],
  preliminary: [104.234, 103.487, 102.958, 101.345],
  fixed: 4,
  perKilometre: 0.7,
  /** Corrections, mm: fitted value less observation. */
  corrections: ['0.81', '-2.18', '0.00', '2.01', '-0.81', '0.18'],
  heights: ['104.2350', '103.4868', '102.9588'],
  standards: ['1.13', '1.19', '0.91'],
  /** |w| of each observation, σ taken as known. */
  w: ['1.9', '2.1', '0.0', '2.6', '0.7', '0.6'],
  redundancies: ['0.3', '0.7', '0.5', '0.5', '0.7', '0.2'],
  chiSquare: '8.217',
  degrees: 3,
} as const;

/** The same with 10 mm added to the difference from 2 to 3: derived, not published. */
export const WITH_BLUNDER = {
  place: 3,
  added: 0.01,
  w: [2.41771, 0.481901, 1.97739, 4.44912, 2.17129, 3.66412],
  likelyBlunder: 6.31895,
} as const;

/** The two-sided points of the normal distribution that data snooping uses: from memory. */
export const SNOOPING_LIMITS = [
  [0.05, '1.96'],
  [0.01, '2.576'],
  [0.001, '3.29'],
] as const;
