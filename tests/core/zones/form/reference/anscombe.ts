/**
 * Anscombe, Graphs in statistical analysis, The American Statistician 27 (1973), sets I and II, as
 * file ANSCOMBE.DAT of the NIST e-Handbook data sets. Found, in a public copy of the file.
 *
 * Published: the least-squares lines, 3 + 0.5·x to the digits given. Derived here, not published:
 * the ranges of the residuals and the minimum zones, in exact rational arithmetic with a certificate.
 */
export const ANSCOMBE = [
  {
    name: 'I',
    x: [10, 8, 13, 9, 11, 14, 6, 4, 12, 7, 5],
    y: [8.04, 6.95, 7.58, 8.81, 8.33, 9.96, 7.24, 4.26, 10.84, 4.82, 5.68],
    published: { intercept: '3.00', slope: '0.500' },
    derived: {
      leastSquares: 41361 / 11000,
      minimumZone: 93 / 25,
      slope: 23 / 50,
      upper: { 8: 1 },
      lower: { 2: 5 / 6, 9: 1 / 6 },
    },
  },
  {
    name: 'II',
    x: [10, 8, 13, 9, 11, 14, 6, 4, 12, 7, 5],
    y: [9.14, 8.14, 8.74, 8.77, 9.26, 8.1, 6.13, 3.1, 9.13, 7.26, 4.74],
    published: { intercept: '3.00', slope: '0.500' },
    derived: {
      leastSquares: 317 / 100,
      minimumZone: 317 / 100,
      slope: 1 / 2,
      upper: { 3: 1 },
      lower: { 5: 1 / 2, 7: 1 / 2 },
    },
  },
] as const;
