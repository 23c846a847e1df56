/**
 * The zones of NIST StRD Norris, whose data and certified line are in tests/core/reference.
 * Derived here, not published: exact rational arithmetic with a certificate.
 */
export const NORRIS_ZONE = {
  leastSquares: 19748769807 / 4767742150,
  minimumZone: 130949 / 32990,
  slope: 3301 / 3299,
  upper: { 3: 1 },
  lower: { 28: 2155 / 3299, 33: 1144 / 3299 },
} as const;
