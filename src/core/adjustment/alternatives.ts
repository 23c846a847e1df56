import type { OrthogonalDecomposition } from './orthogonal-decomposition';
import { lengthOf } from './vector';

/** An error of a known shape and an unknown size, held against there being none. */
export interface AlternativeTest {
  /** Likely size of the error, were there one, in units of its effects. */
  readonly size: number;
  /** Standard uncertainty of that size, from those of the observations. */
  readonly standard: number;
  /** Size over its standard uncertainty: normal with standard deviation 1 where there is no error. */
  readonly statistic: number;
  /** Correlation of the statistic with the standardised residual of each observation; 0 where nothing checks that. */
  readonly correlations: Float64Array;
}

/** An error of which no more than this part of the square shows in the residuals is not seen. */
export const BARELY = 0.01;

/** What a solved problem knows of its residuals. */
interface Solved {
  readonly parts: OrthogonalDecomposition;
  readonly standards: ArrayLike<number>;
  readonly residuals: Float64Array;
  readonly redundancies: Float64Array;
}

/**
 * The test of one more unknown that would shift the observations by `effects` for each unit of its
 * size: w = cᵀWv/√(cᵀWRc), with the size cᵀWv/(cᵀWRc). A blunder in one observation is the shape with
 * a single 1, and w its standardised residual (Baarda, 1968; Teunissen, Testing Theory, 2000, 3.3;
 * both from memory). Undefined where the residuals barely show it.
 *
 * @throws RangeError where there is not one finite effect for each observation.
 */
export function testAlternative(
  { parts, standards, residuals, redundancies }: Solved,
  effects: ArrayLike<number>,
): AlternativeTest | undefined {
  const { rows } = parts;
  if (effects.length !== rows) throw new RangeError('One effect is needed for each observation');
  const whole = Float64Array.from({ length: rows }, (_, i) => effects[i]! / standards[i]!);
  if (!whole.every(Number.isFinite)) throw new RangeError('An effect is not finite');
  const seen = offRange(parts, whole);
  const length = lengthOf(seen);
  if (length ** 2 <= BARELY * lengthOf(whole) ** 2) return undefined;
  let along = 0;
  for (let i = 0; i < rows; i += 1) along += seen[i]! * (residuals[i]! / standards[i]!);
  return {
    size: along / length ** 2,
    standard: 1 / length,
    statistic: along / length,
    correlations: seen.map((part, i) =>
      redundancies[i]! > BARELY ? part / (length * Math.sqrt(redundancies[i]!)) : 0,
    ),
  };
}

/** What is left of `vector` off the range of the whitened matrix: what no choice of the unknowns takes up. */
function offRange({ rows, rank, range }: OrthogonalDecomposition, vector: Float64Array) {
  const left = Float64Array.from(vector);
  for (let k = 0; k < rank; k += 1) {
    const column = range.subarray(k * rows, (k + 1) * rows);
    let along = 0;
    for (let i = 0; i < rows; i += 1) along += column[i]! * left[i]!;
    for (let i = 0; i < rows; i += 1) left[i] = left[i]! - along * column[i]!;
  }
  return left;
}
