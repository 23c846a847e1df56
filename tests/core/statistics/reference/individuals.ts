/**
 * NIST/SEMATECH e-Handbook of Statistical Methods, 6.3.2.2: an individuals control chart. Data and
 * limits found alike in several public test suites; worked again.
 */
export const INDIVIDUALS = {
  readings: [49.6, 47.6, 49.9, 51.3, 47.8, 51.2, 52.6, 52.4, 53.6, 52.1],
  centre: '50.81',
  meanMovingRange: '1.8778',
  upper: '55.8041',
  lower: '45.8159',
} as const;
