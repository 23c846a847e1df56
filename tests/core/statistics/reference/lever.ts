/**
 * What a lever indicator's reading is multiplied by, from two trade tables found on the web; the
 * second rounds some entries and cuts off the digits of others (0.86 for 30°, 0.94 for 20°).
 */
export const LEVER_TABLES = {
  angles: [10, 20, 30, 40, 50, 60],
  rounded: ['0.98', '0.94', '0.87', '0.77', '0.64', '0.50'],
  rough: [0.98, 0.94, 0.86, 0.76, 0.64, 0.5],
} as const;

/** Reading, angle and movement: found with the tables, and worked again. */
export const LEVER_EXAMPLES = [
  { reading: 0.2, angle: 30, movement: '0.1732' },
  { reading: 0.004, angle: 60, movement: '0.0020' },
] as const;
