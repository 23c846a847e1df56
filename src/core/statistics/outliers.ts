import { normalQuantile } from './normal';
import { studentQuantile } from './student';

/** A redundancy below this is rounding: nothing checks the reading. */
const UNCHECKED = 1e-9;

/**
 * The standardised residual beyond which a reading is suspect, either way, where `significance` of
 * good readings are suspected wrongly: 3.29 for 0.001. Data snooping, Baarda, A testing procedure
 * for use in geodetic networks (1968); the normal distribution, as σ is taken as known.
 *
 * @throws RangeError where the significance is not between 0 and 1.
 */
export function snoopingLimit(significance: number): number {
  if (!(significance > 0 && significance < 1)) {
    throw new RangeError('A significance lies between 0 and 1');
  }
  return Math.abs(normalQuantile(significance / 2));
}

/**
 * w = v/(σ·√r): the residual over its own standard deviation, with the sign of the residual.
 * Undefined where the redundancy is 0 and nothing checks the reading.
 *
 * @param residual reading less fitted value
 * @param standard standard uncertainty of the reading, in the unit of the residual
 * @param redundancy r, 0 to 1
 */
export function standardisedResidual(
  residual: number,
  standard: number,
  redundancy: number,
): number | undefined {
  return redundancy > UNCHECKED ? residual / (standard * Math.sqrt(redundancy)) : undefined;
}

/** The likely size of a blunder, v/r, with its sign, in the unit of the residual; as above. */
export function likelyBlunder(residual: number, redundancy: number): number | undefined {
  return redundancy > UNCHECKED ? residual / redundancy : undefined;
}

/** A reading that stands furthest from the mean of all. */
export interface Extreme {
  /** From 0. */
  readonly place: number;
  /** How far it stands off, over the standard deviation of all. */
  readonly statistic: number;
}

/**
 * The statistic of Grubbs, Technometrics 11 (1969): max |x - mean|/s. Undefined where fewer than
 * three readings, or readings all alike, leave nothing to judge by.
 *
 * @throws RangeError where a reading is not finite.
 */
export function grubbsExtreme(readings: readonly number[]): Extreme | undefined {
  if (!readings.every(Number.isFinite)) throw new RangeError('A reading is not finite');
  if (readings.length < 3) return undefined;
  const from = readings.map((reading) => reading - readings[0]!);
  const mean = from.reduce((total, one) => total + one, 0) / from.length;
  const off = from.map((one) => Math.abs(one - mean));
  const standard = Math.sqrt(off.reduce((total, one) => total + one * one, 0) / (off.length - 1));
  if (standard === 0) return undefined;
  const greatest = Math.max(...off);
  return { place: off.indexOf(greatest), statistic: greatest / standard };
}

/**
 * Critical value of Grubbs' test for `count` readings: (n-1)/√n·√(t²/(n-2+t²)), t being the upper
 * point of Student's distribution with n - 2 degrees of freedom at significance/n for one side,
 * significance/2n for both (NIST/SEMATECH e-Handbook 1.3.5.17.1).
 *
 * @throws RangeError where there are not three readings or more, or the significance is not between 0 and 1.
 */
export function grubbsLimit(
  count: number,
  significance: number,
  sides: 'one' | 'both' = 'both',
): number {
  if (!(Number.isInteger(count) && count >= 3)) throw new RangeError('Three readings are needed');
  if (!(significance > 0 && significance < 1)) {
    throw new RangeError('A significance lies between 0 and 1');
  }
  const share = significance / (sides === 'one' ? count : 2 * count);
  const square = studentQuantile(share, count - 2) ** 2;
  return ((count - 1) / Math.sqrt(count)) * Math.sqrt(square / (count - 2 + square));
}
