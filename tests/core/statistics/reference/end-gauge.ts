/**
 * Calibration of an end gauge, JCGM 100:2008 (GUM), H.1, Table H.1: standard uncertainties in nm
 * with their degrees of freedom, and what they come to. From memory; every number was worked again.
 */
export const END_GAUGE = {
  /** The standard; the comparison; the difference in expansion; that in temperature. */
  components: [
    { standard: 25, degreesOfFreedom: 18 },
    { standard: 9.7, degreesOfFreedom: 25.6 },
    { standard: 2.9, degreesOfFreedom: 50 },
    { standard: 16.6, degreesOfFreedom: 2 },
  ],
  /** What the comparison consists of: repeats, and the comparator's random and systematic effects. */
  comparison: {
    components: [
      { standard: 5.8, degreesOfFreedom: 24 },
      { standard: 3.9, degreesOfFreedom: 5 },
      { standard: 6.7, degreesOfFreedom: 8 },
    ],
    standard: '9.7',
    degrees: '25.6',
  },
  combined: '32',
  /** 16.7 before it is cut. */
  degrees: 16,
  t99: '2.92',
  expanded: '93',
} as const;
