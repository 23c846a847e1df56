/**
 * Wire-wound resistors of 1500 ohm, JCGM 106:2012, 9.5: figures and rounded risks from memory. The
 * risks to six digits are derived, by adaptive quadrature in another library (scipy): they are the
 * reference here, not the citation.
 */
export const RESISTORS = {
  nominal: 1500,
  lower: 1499.8,
  upper: 1500.2,
  /** Standard deviation of the process, and standard uncertainty of the measurement, ohm. */
  process: 0.12,
  standard: 0.04,
  conforming: '0.9',
  risks: [
    { guard: 0, consumer: 0.0189422, producer: 0.0372078, published: ['0.02', '0.04'] },
    { guard: 0.02, consumer: 0.00987829, producer: 0.0690265, published: ['0.01', '0.07'] },
    { guard: 0.04, consumer: 0.00433407, producer: 0.114657, published: undefined },
    { guard: 0.06, consumer: 0.00157535, producer: 0.174376, published: undefined },
    { guard: 0.08, consumer: 0.000468634, producer: 0.24767, published: undefined },
  ],
} as const;
