/** Expected range of two normal readings in standard deviations: 2/√π, to the digits of the charts' tables. */
const D2_OF_TWO = 1.128;

/** An individuals control chart. All in the unit of the readings. */
export interface IndividualsChart {
  readonly centre: number;
  /** Mean of the differences between neighbours, without sign. */
  readonly meanMovingRange: number;
  readonly lower: number;
  readonly upper: number;
}

/**
 * The chart of single readings in the order they were taken: the centre is their mean, the limits
 * stand 3·(mean moving range)/1.128 off it. NIST/SEMATECH e-Handbook of Statistical Methods,
 * 6.3.2.2.
 *
 * @returns undefined where there are not two readings yet.
 * @throws RangeError where a reading is not finite.
 */
export function individualsChart(readings: readonly number[]): IndividualsChart | undefined {
  if (!readings.every(Number.isFinite)) throw new RangeError('A reading is not finite');
  if (readings.length < 2) return undefined;
  const ranges = readings.slice(1).map((reading, index) => Math.abs(reading - readings[index]!));
  const meanMovingRange = meanOf(ranges);
  // From the first reading, so that readings all alike are their own mean to the last bit.
  const first = readings[0]!;
  const centre = first + meanOf(readings.map((reading) => reading - first));
  const reach = (3 * meanMovingRange) / D2_OF_TWO;
  return { centre, meanMovingRange, lower: centre - reach, upper: centre + reach };
}

/**
 * The same with the readings outside its limits left out of the limits, once: what made them stand
 * outside is no part of how the readings usually scatter. Common practice where limits are first set
 * up.
 */
export function chartOfUsual(readings: readonly number[]): IndividualsChart | undefined {
  const chart = individualsChart(readings);
  if (chart === undefined) return undefined;
  const outside = new Set(outOfLimits(readings, chart));
  return individualsChart(readings.filter((_, place) => !outside.has(place))) ?? chart;
}

/** Places, from 0, of the readings that lie outside the limits of `chart`; on a limit is inside. */
export function outOfLimits(
  readings: readonly number[],
  { lower, upper }: Pick<IndividualsChart, 'lower' | 'upper'>,
): readonly number[] {
  return readings.flatMap((reading, place) => (reading < lower || reading > upper ? [place] : []));
}

function meanOf(values: readonly number[]): number {
  return values.reduce((total, value) => total + value, 0) / values.length;
}
