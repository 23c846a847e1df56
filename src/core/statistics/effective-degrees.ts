import { studentWithin } from './student';

/** A standard uncertainty, in the unit of the result, and how well it is known itself. */
export interface DoubtComponent {
  /** Effect on the result of one standard uncertainty of the cause, |cᵢ|·u(xᵢ) (GUM 5.1.3). */
  readonly standard: number;
  /** 1 or more; Infinity where the standard uncertainty is taken for certain. */
  readonly degreesOfFreedom: number;
}

/** Just short of a whole number by rounding is that number: 15.999999999 degrees are 16. */
const ROUNDING = 1e-9;

/**
 * Combined standard uncertainty of independent components, in their unit, with its effective
 * degrees of freedom: u⁴/Σ(uᵢ⁴/νᵢ), the formula of Welch and Satterthwaite (GUM G.4.1, equation
 * G.2b). They are not rounded, never below the least νᵢ, and Infinity where no component counts.
 *
 * @throws RangeError where a standard uncertainty is below 0 or not finite, or degrees are below 1.
 */
export function combineDoubt(components: readonly DoubtComponent[]): DoubtComponent {
  components.forEach(refuseNonsense);
  const standard = Math.hypot(...components.map((component) => component.standard));
  let total = 0;
  if (standard > 0) {
    for (const component of components) {
      total += (component.standard / standard) ** 4 / component.degreesOfFreedom;
    }
  }
  return { standard, degreesOfFreedom: 1 / total };
}

/**
 * The k for which ±k·u holds the value with the probability `part` (GUM G.3.2). Effective degrees
 * of freedom that are no whole number are cut to the next lower one: G.4.1 allows that or
 * interpolation; cutting never makes the interval too short.
 *
 * @throws RangeError where `part` is not between 0 and 1, or the degrees are below 1.
 */
export function coverageFactor(part: number, degreesOfFreedom: number): number {
  return studentWithin(part, Math.floor(degreesOfFreedom * (1 + ROUNDING)));
}

/**
 * Degrees of freedom of a standard uncertainty that was judged, not observed, and may itself be off
 * by the share `unreliability`, 0.25 for a quarter: ½·(Δu/u)⁻² (GUM G.4.2, equation G.3). Not below
 * 1, and Infinity for a share of 0.
 *
 * @throws RangeError where the share is below 0.
 */
export function degreesOfJudgement(unreliability: number): number {
  if (!(unreliability >= 0)) throw new RangeError('A share is 0 or more');
  return Math.max(1, 0.5 / (unreliability * unreliability));
}

function refuseNonsense({ standard, degreesOfFreedom }: DoubtComponent): void {
  if (!(standard >= 0 && standard < Number.POSITIVE_INFINITY)) {
    throw new RangeError('A standard uncertainty is 0 or more');
  }
  if (!(degreesOfFreedom >= 1)) throw new RangeError('Degrees of freedom are 1 or more');
}
