import { chiSquareAbove } from './chi-square';

/** Whether the residuals of a fit are as small as the stated uncertainties say. */
export interface GlobalTest {
  /** Probability of a chi-square as large as this or larger, where the uncertainties are right. */
  readonly probability: number;
  /** False where that is below the significance: the uncertainties are too small, or a reading is wrong. */
  readonly passes: boolean;
}

/**
 * The global test of a fit (Baarda, 1968): chi-square against its distribution,
 * upper tail only, as a fit that is too good harms nobody. Undefined where no degree of freedom
 * leaves anything to test.
 *
 * @param chiSquare Σ(residual/σ)²
 * @param degreesOfFreedom readings less what they settle, a whole number
 * @param significance share of good fits that fail, 0.05 by custom
 * @throws RangeError where chi-square is below 0, the degrees are below 0 or the significance is not between 0 and 1.
 */
export function globalTest(
  chiSquare: number,
  degreesOfFreedom: number,
  significance = 0.05,
): GlobalTest | undefined {
  if (!(significance > 0 && significance < 1)) {
    throw new RangeError('A significance lies between 0 and 1');
  }
  if (degreesOfFreedom === 0) return undefined;
  const probability = chiSquareAbove(chiSquare, degreesOfFreedom);
  return { probability, passes: probability >= significance };
}
