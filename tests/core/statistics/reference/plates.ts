/**
 * ISO 8512-2:1990, granite surface plates: overall flatness in µm, grades 0 to 3, by size in mm.
 * From memory, the table apart from the formula; they agree with each other. The table's steps are
 * 0.5 µm for grade 0 and 1 µm for the others.
 */
export const ISO_TABLE: readonly (readonly [number, number, readonly number[]])[] = [
  [160, 100, [3, 6, 12, 25]],
  [250, 160, [3.5, 7, 14, 27]],
  [400, 250, [4, 8, 16, 32]],
  [630, 400, [5, 10, 20, 39]],
  [1000, 630, [6, 12, 24, 49]],
  [1600, 1000, [8, 16, 33, 66]],
  [2000, 1000, [9.5, 19, 38, 75]],
  [2500, 1600, [11.5, 23, 46, 92]],
  [250, 250, [3.5, 7, 15, 30]],
  [400, 400, [4.5, 9, 17, 34]],
  [630, 630, [5, 10, 21, 42]],
  [1000, 1000, [7, 14, 28, 56]],
];

/**
 * Federal Specification GGG-P-463c, Table III: flatness in µin by size in inches, grade AA. Found
 * second-hand, on a calibration laboratory's page too, which also gives A as twice and B as four
 * times that. That the table rounds to 25 µin below 100 µin and to 50 µin above is inferred from
 * these sizes.
 */
export const FEDERAL_TABLE: readonly (readonly [number, number, number])[] = [
  [12, 12, 50],
  [12, 18, 50],
  [18, 24, 75],
  [24, 36, 100],
  [36, 48, 200],
  [48, 72, 350],
  [48, 96, 500],
];
