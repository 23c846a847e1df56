import type { Equation } from '../readings/equation';
import { likelyBlunder, standardisedResidual } from '../statistics/outliers';
import { BARELY } from './alternatives';
import type { LeastSquares } from './least-squares';

/** How one equation came out beside the others. */
export interface EquationCheck {
  readonly reading: string;
  /** Reading less fitted value, µm. */
  readonly residual: number;
  /** Part of a blunder that shows in the residual: 0 is unchecked by the others, 1 wholly checked. */
  readonly redundancy: number;
  /** Residual over its own standard deviation; undefined where nothing checks the reading. */
  readonly standardised: number | undefined;
  /** The likely size of a blunder, µm, were there one; undefined where nothing checks the reading. */
  readonly blunder: number | undefined;
}

/**
 * Redundancy numbers and standardised residuals of every equation (Baarda, 1968). One that is barely
 * checked is told as unchecked: a blunder would have to be ten times as large to show.
 */
export function checksOf(
  equations: readonly Equation[],
  standards: readonly number[],
  solved: LeastSquares,
): readonly EquationCheck[] {
  return equations.map(({ reading }, row) => {
    const residual = solved.residuals[row]!;
    const redundancy = solved.redundancies[row]!;
    const checked = redundancy > BARELY;
    return {
      reading,
      residual,
      redundancy,
      standardised: checked
        ? standardisedResidual(residual, standards[row]!, redundancy)
        : undefined,
      blunder: checked ? likelyBlunder(residual, redundancy) : undefined,
    };
  });
}

/** Two standardised residuals this close, as a share, cannot be told apart. */
const ALIKE = 1e-6;

/**
 * The readings that fail data snooping at `limit`: the one with the greatest standardised residual,
 * and those that the other readings cannot tell from it. One round at a time: with a blunder out,
 * the rest is judged afresh.
 */
export function suspectsAmong(
  checks: readonly EquationCheck[],
  limit: number,
): readonly EquationCheck[] {
  const sizes = checks.map(({ standardised }) => Math.abs(standardised ?? 0));
  const greatest = Math.max(0, ...sizes);
  if (greatest <= limit) return [];
  return checks.filter((_, index) => sizes[index]! >= greatest * (1 - ALIKE));
}
