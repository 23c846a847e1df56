import type { CertifiedPolynomial } from './certified-polynomial';

/*
 * NIST Statistical Reference Datasets (StRD), linear regression, Wampler1.dat to Wampler5.dat, after
 * Wampler, Journal of the American Statistical Association 65 (1970). Wampler1 to Wampler4 found in
 * public copies of the files, their residual standard deviations from memory; Wampler5 from memory.
 * The certified values of Wampler1 to Wampler4 were worked again in exact rational arithmetic.
 */

/** 1 + x + x² + x³ + x⁴ + x⁵ at x = 0 to 20. */
const ALL_ONES = [
  1, 6, 63, 364, 1365, 3906, 9331, 19608, 37449, 66430, 111111, 177156, 271453, 402234, 579195,
  813616, 1118481, 1508598, 2000719, 2613660, 3368421,
];

/** 1 + x/10 + (x/10)² + … + (x/10)⁵ at x = 0 to 20. */
const ALL_TENTHS = [
  1, 1.11111, 1.24992, 1.42753, 1.65984, 1.96875, 2.38336, 2.94117, 3.68928, 4.68559, 6, 7.71561,
  9.92992, 12.75603, 16.32384, 20.78125, 26.29536, 33.05367, 41.26528, 51.16209, 63,
];

/** What Wampler3 adds; Wampler4 adds 100 and Wampler5 10000 times as much. No fifth degree takes any of it up. */
const DEPARTURES = [
  759, -2048, 2048, -2048, 2523, -2048, 2048, -2048, 1838, -2048, 2048, -2048, 1838, -2048, 2048,
  -2048, 2523, -2048, 2048, -2048, 759,
];

function wampler(times: number): CertifiedPolynomial {
  return {
    x: ALL_ONES.map((_, x) => x),
    y: ALL_ONES.map((y, x) => y + times * DEPARTURES[x]!),
    parameters: [1, 1, 1, 1, 1, 1],
    standardDeviations: [
      2152.3262467817, 2363.55173469681, 779.343524331583, 101.47550755035, 5.64566512170752,
      0.112324854679312,
    ].map((deviation) => deviation * times),
    residualStandardDeviation: 2360.14502379268 * times,
  };
}

export const WAMPLER_1 = wampler(0);
export const WAMPLER_2: CertifiedPolynomial = {
  ...WAMPLER_1,
  y: ALL_TENTHS,
  parameters: [1, 0.1, 0.01, 0.001, 0.0001, 0.00001],
};
export const WAMPLER_3 = wampler(1);
export const WAMPLER_4 = wampler(100);
export const WAMPLER_5 = wampler(10000);
