/**
 * JCGM 106:2012, Evaluation of measurement data: the role of measurement uncertainty in conformity
 * assessment. All from memory, no copy of the text at hand; every number was worked again.
 */
export const JCGM_106 = {
  /** Clause 7, a Zener diode with an upper limit, V: measured y with standard uncertainty u. */
  zener: { y: -5.47, u: 0.05, upper: -5.4, z: 1.4, probability: '0.92' },
  /** 7.3, Table 1: probability of conformity and z = (upper - y)/u. */
  table1: [
    [0.8, '0.84'],
    [0.9, '1.28'],
    [0.95, '1.64'],
    [0.99, '2.33'],
    [0.999, '3.09'],
  ],
  /** 8.3: probability of conformity at an acceptance limit that stands w·u inside the tolerance limit. */
  guardBands: [
    [0, 0.5],
    [1.645, 0.95],
    [2, 0.97725],
  ],
  /**
   * 8.3.3, guarded rejection: a speed is held to be over the limit, km/h, where that is 99.9 % sure,
   * the measured speed having a standard uncertainty of 2 % of itself.
   */
  speed: { limit: 100, relative: 0.02, level: 0.999, threshold: 107 },
} as const;

/**
 * ISO 14253-1:2017 takes 95 % for proof, which with one limit is a guard band of 1.65 u (found
 * second-hand, not in the standard itself). The cases are derived from that rule, not published.
 */
export const ISO_14253_1 = {
  guardBand: 1.65,
  upper: 10,
  u: 0.5,
  cases: [
    { y: 9.1, verdict: 'in' },
    { y: 9.3, verdict: 'too close to call' },
    { y: 10.7, verdict: 'too close to call' },
    { y: 10.9, verdict: 'out' },
  ],
} as const;
