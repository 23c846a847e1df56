import type { CertifiedPolynomial } from './certified-polynomial';

/**
 * NIST Statistical Reference Datasets (StRD), linear regression, Norris.dat. Found, in public copies of the file.
 * The certified values were worked again in exact rational arithmetic and agree.
 */
export const NORRIS: CertifiedPolynomial = {
  x: [
    0.2, 337.4, 118.2, 884.6, 10.1, 226.5, 666.3, 996.3, 448.6, 777, 558.2, 0.4, 0.6, 775.5, 666.9,
    338, 447.5, 11.6, 556, 228.1, 995.8, 887.6, 120.2, 0.3, 0.3, 556.8, 339.1, 887.2, 999, 779,
    11.1, 118.3, 229.2, 669.1, 448.9, 0.5,
  ],
  y: [
    0.1, 338.8, 118.1, 888, 9.2, 228.1, 668.5, 998.5, 449.1, 778.9, 559.2, 0.3, 0.1, 778.1, 668.8,
    339.3, 448.9, 10.8, 557.7, 228.3, 998, 888.8, 119.6, 0.3, 0.6, 557.6, 339.3, 888, 998.5, 778.9,
    10.2, 117.6, 228.9, 668.4, 449.2, 0.2,
  ],
  parameters: [-0.262323073774029, 1.00211681802045],
  standardDeviations: [0.232818234301152, 0.000429796848199937],
  residualStandardDeviation: 0.884796396144373,
};
