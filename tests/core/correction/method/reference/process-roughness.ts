/**
 * Usual ranges of Ra by process, µm: a chart of the kind of the appendix to ASME B46.1, found in a
 * public table; two more public charts agree in order of magnitude. Usual ranges, not limits.
 */
export const RA_BY_PROCESS = {
  lapping: [0.05, 0.4],
  'surface grinding': [0.1, 1.6],
  'boring, turning': [0.4, 6.3],
  milling: [0.8, 6.3],
} as const;
