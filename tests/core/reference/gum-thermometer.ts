/**
 * Calibration of a thermometer, JCGM 100:2008 (GUM), H.3, Table H.6: thermometer readings t and the
 * corrections b observed, °C, for the line b = y1 + y2·(t - t0). Data found in three independent
 * public libraries; the results printed there from memory, each digit reproduced.
 */
export const THERMOMETER = {
  t: [21.521, 22.012, 22.512, 23.003, 23.507, 23.999, 24.513, 25.002, 25.503, 26.01, 26.511],
  b: [-0.171, -0.169, -0.166, -0.159, -0.164, -0.165, -0.156, -0.157, -0.159, -0.161, -0.16],
  t0: 20,
  printed: {
    y1: '-0.1712',
    standardOfY1: '0.0029',
    y2: '0.00218',
    standardOfY2: '0.00067',
    correlation: '-0.930',
    s: '0.0035',
    degreesOfFreedom: 9,
    /** The correction at t = 30 °C. */
    at30: '-0.1494',
    standardAt30: '0.0041',
  },
} as const;
