/**
 * A voltage standard read five times on each of ten days, JCGM 100:2008 (GUM), H.5, Table H.9: the
 * standard deviations of the days, µV. Data and results found in the tests of a public uncertainty
 * calculator; the results also from memory.
 */
export const VOLTAGE_STANDARD = {
  dailyDeviations: [60, 77, 111, 101, 67, 93, 80, 73, 88, 86],
  readingsADay: 5,
  pooled: '85',
  degrees: 40,
} as const;
