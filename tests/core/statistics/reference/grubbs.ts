/** One-sided 5 % points of Grubbs' test for 3 to 20 readings. A printed table, found. */
export const ONE_SIDED_5 = [
  1.1531, 1.4625, 1.6714, 1.8221, 1.9381, 2.0317, 2.1096, 2.1761, 2.2339, 2.285, 2.3305, 2.3717,
  2.409, 2.4433, 2.4748, 2.504, 2.5312, 2.5566,
];

/** Both sides, 5 %, for 3 to 30 readings: derived with another library (scipy), not published. */
export const BOTH_SIDES_5 = [
  1.154305, 1.48125, 1.715037, 1.887145, 2.019969, 2.126645, 2.215004, 2.289954, 2.35473, 2.41156,
  2.462033, 2.507321, 2.548308, 2.585676, 2.619964, 2.651599, 2.680931, 2.708246, 2.73378, 2.757735,
  2.780277, 2.801551, 2.821681, 2.840774, 2.858923, 2.876209, 2.892705, 2.908473,
];

/** One side, 1 %, for 3 to 30 readings: derived likewise. */
export const ONE_SIDED_1 = [
  1.154637, 1.4925, 1.748857, 1.944245, 2.097304, 2.220833, 2.323148, 2.409725, 2.484279, 2.549417,
  2.60702, 2.65848, 2.704855, 2.746963, 2.785445, 2.820817, 2.853495, 2.883821, 2.912078, 2.938503,
  2.963296, 2.986628, 3.008645, 3.029473, 3.049223, 3.067989, 3.085855, 3.102897,
];

/**
 * Uranium isotope ratios of Tietjen and Moore (1972), NIST/SEMATECH e-Handbook 1.3.5.17.1. Found;
 * the statistic printed there cuts off its last digit.
 */
export const URANIUM = {
  readings: [199.31, 199.53, 200.19, 200.82, 201.92, 201.95, 202.18, 245.57],
  statistic: '2.4687',
  limit: '2.032',
  outlier: 245.57,
} as const;

/**
 * Rosner (1983), NIST/SEMATECH e-Handbook 1.3.5.17.3: 54 readings, statistics and 5 % critical values with
 * 0, 1, 2 … of the most extreme taken away. Each is that of Grubbs' test on what is left. Data
 * found in a public mirror; the table from memory; it cuts off digits rather than rounding.
 */
export const ROSNER = {
  readings: [
    -0.25, 0.68, 0.94, 1.15, 1.2, 1.26, 1.26, 1.34, 1.38, 1.43, 1.49, 1.49, 1.55, 1.56, 1.58, 1.65,
    1.69, 1.7, 1.76, 1.77, 1.81, 1.91, 1.94, 1.96, 1.99, 2.06, 2.09, 2.1, 2.14, 2.15, 2.23, 2.24,
    2.26, 2.35, 2.37, 2.4, 2.47, 2.54, 2.62, 2.64, 2.9, 2.92, 2.92, 2.93, 3.21, 3.26, 3.3, 3.59,
    3.68, 4.3, 4.64, 5.34, 5.42, 6.01,
  ],
  statistics: [
    '3.118',
    '2.942',
    '3.179',
    '2.810',
    '2.815',
    '2.848',
    '2.279',
    '2.310',
    '2.101',
    '2.067',
  ],
  limits: [
    '3.158',
    '3.151',
    '3.143',
    '3.136',
    '3.128',
    '3.120',
    '3.111',
    '3.103',
    '3.094',
    '3.085',
  ],
  outliers: 3,
} as const;
