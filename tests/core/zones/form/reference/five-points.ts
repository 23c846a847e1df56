/**
 * A question in a public engineering forum (2015) on flatness by hand: five points, in the unit
 * posted, found there with no answer.
 *
 * Derived here, not published: both results, in exact rational arithmetic with a certificate.
 */
export const FIVE_POINTS = {
  points: [
    { u: 11.5, v: 7, deviation: 1.1 },
    { u: 18.5, v: 6.9, deviation: 1.03 },
    { u: 4.5, v: 13, deviation: 1.02 },
    { u: 25.5, v: 30, deviation: 1.03 },
    { u: 11.5, v: 37.5, deviation: 1.02 },
  ],
  derived: {
    leastSquares: 13861999 / 192267900,
    minimumZone: 4103 / 61000,
    slopes: { u: -3 / 7000, v: -4 / 1525 },
    upper: { 0: 551 / 610, 4: 59 / 610 },
    lower: { 1: 1 / 2, 2: 1 / 2 },
  },
} as const;
