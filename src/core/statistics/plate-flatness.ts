/*
 * How far from flat a surface plate may be, by its size and grade: the whole width of the zone
 * between two planes that holds its working surface, in µm. Sizes in mm.
 */

/** Grades of ISO 8512, best first. */
export const ISO_PLATE_GRADES = [0, 1, 2, 3] as const;
export type IsoPlateGrade = (typeof ISO_PLATE_GRADES)[number];

/** Grades of GGG-P-463c, best first: laboratory, inspection and tool room. */
export const FEDERAL_PLATE_GRADES = ['AA', 'A', 'B'] as const;
export type FederalPlateGrade = (typeof FEDERAL_PLATE_GRADES)[number];

/** µm per mm of diagonal, and µm. */
const ISO_COEFFICIENTS: Readonly<Record<IsoPlateGrade, readonly [number, number]>> = {
  0: [0.003, 2.5],
  1: [0.006, 5],
  2: [0.012, 10],
  3: [0.024, 20],
};

const ISO_STEP = 100;

/**
 * Overall flatness allowed by ISO 8512-1 and -2:1990, new cast-iron and granite plates:
 * t = c₁·d + c₂, d being the diagonal rounded up to the next 100 mm. Formula and coefficients from
 * memory, not seen in the standard; the standard's table rounds this to 0.5 µm (grade 0) or 1 µm.
 *
 * @throws RangeError where a side is not above 0, or the grade is none.
 */
export function isoFlatness(length: number, width: number, grade: IsoPlateGrade): number {
  const [slope, least] = coefficientsOf(ISO_COEFFICIENTS, grade);
  // Less a hair, so that a diagonal of 500 mm stays 500 mm when rounding has made it longer.
  const diagonal = Math.ceil(diagonalOf(length, width) / ISO_STEP - 1e-9) * ISO_STEP;
  return slope * diagonal + least;
}

const FEDERAL_FACTORS: Readonly<Record<FederalPlateGrade, number>> = { AA: 1, A: 2, B: 4 };

/**
 * Overall flatness allowed by Federal Specification GGG-P-463c, granite plates. Grade AA by the
 * inch formula is 40 + D²/25 µin, D in inches, and by the metric one 1 + 1.6·10⁻⁶·D² µm, D in mm:
 * up to 1.6 % less. A is twice and B four times that. Formulas found second-hand; the
 * specification's table rounds them, to 25 µin below 100 µin and to 50 µin above.
 *
 * @throws RangeError where a side is not above 0, or the grade is none.
 */
export function federalFlatness(
  length: number,
  width: number,
  grade: FederalPlateGrade,
  formula: 'inch' | 'metric' = 'inch',
): number {
  const factor = coefficientsOf(FEDERAL_FACTORS, grade);
  const diagonal = diagonalOf(length, width);
  if (formula === 'metric') return factor * (1 + 1.6e-6 * diagonal ** 2);
  const microinches = 40 + (diagonal / 25.4) ** 2 / 25;
  return factor * microinches * 0.0254;
}

/**
 * How far a plate may rise or fall over the length of a block, either way, as seen from where the
 * comparator stands, µm: the share of the overall flatness that the block's length is of the
 * plate's diagonal, and no more than all of it.
 *
 * An assumption, common practice without a source, and argued like this. Let the plate be in one
 * bow of depth F over its diagonal D. Its slopes at two places s apart differ by 8·F·s/D², and by
 * that a block L long is tilted to its comparator: 8·F·s·L/D² over its length. That is within
 * F·L/D as long as the two stand no further apart than D/8, between their middles: 150 mm on a
 * plate of 1000 mm × 630 mm.
 *
 * It does not cover a hollow worn by work done always in one place. ISO 8512 lets any spot of
 * 250 mm × 250 mm be as far from flat as a plate of that size (from memory); only a repeat-reading
 * gauge or a map of the plate speaks for such a spot.
 *
 * @param overall width of the zone that holds the plate's surface, µm
 * @param plateDiagonal mm
 * @param blockLength mm, along the plate in the direction that matters
 * @throws RangeError where the flatness is below 0, or a length is not above 0.
 */
export function localFlatness(overall: number, plateDiagonal: number, blockLength: number): number {
  if (!(overall >= 0 && overall < Number.POSITIVE_INFINITY)) {
    throw new RangeError('A flatness is 0 or more');
  }
  refuseNoLength(plateDiagonal);
  refuseNoLength(blockLength);
  return overall * Math.min(1, blockLength / plateDiagonal);
}

/** Diagonal of a plate in mm. @throws RangeError where a side is not above 0. */
export function diagonalOf(length: number, width: number): number {
  refuseNoLength(length);
  refuseNoLength(width);
  return Math.hypot(length, width);
}

function refuseNoLength(length: number): void {
  if (!(length > 0 && length < Number.POSITIVE_INFINITY)) {
    throw new RangeError('A length is above 0');
  }
}

function coefficientsOf<Grade extends PropertyKey, Value>(
  table: Readonly<Record<Grade, Value>>,
  grade: Grade,
): Value {
  if (!Object.hasOwn(table, grade)) throw new RangeError('There is no such grade');
  return table[grade];
}
