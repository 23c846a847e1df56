import { evaluate, type LinearForm } from '../part/linear-form';
import { combined, type Equation } from '../readings/equation';
import { type LinearEstimate, solveLeastSquares } from './least-squares';

/** A quantity that the readings fix. Its unit is that of the form asked for. */
export interface Estimate {
  readonly value: number;
  /** Standard uncertainty, the doubt in heights and places included. */
  readonly standard: number;
  /** Ids of the readings that the value rests on. */
  readonly restsOn: ReadonlySet<string>;
}

/** How one equation came out. */
export interface EquationCheck {
  readonly reading: string;
  /** Reading less fitted value, µm. */
  readonly residual: number;
  /** Part of a blunder that shows in the residual: 0 is unchecked by the others, 1 wholly checked. */
  readonly redundancy: number;
}

/** All readings of an inspection, adjusted at once. */
export interface Adjustment {
  readonly checks: readonly EquationCheck[];
  /** Equations less what they settle: how many say something twice. */
  readonly degreesOfFreedom: number;
  readonly chiSquare: number;
  /** `form` of the unknowns, or undefined where the readings do not fix it. */
  estimate(form: LinearForm): Estimate | undefined;
  /** Covariance of two forms, in the product of their units; undefined where either is not fixed. */
  covariance(one: LinearForm, other: LinearForm): number | undefined;
}

/** Gains below this part of the greatest are rounding: the value does not rest on that reading. */
const NO_GAIN = 1e-9;

/** Weighted least squares over `equations`, of whatever mix of readings. No reading at all fixes nothing. */
export function adjust(equations: readonly Equation[]): Adjustment {
  const places = placesOf(equations);
  const rows = equations.length;
  const matrix = new Float64Array(rows * places.size);
  equations.forEach((equation, row) => {
    for (const [name, weight] of equation.form) matrix[row + places.get(name)! * rows] = weight;
  });
  const standards = equations.map((equation) => combined(equation.components));
  const solved = solveLeastSquares(
    matrix,
    equations.map((equation) => equation.value),
    standards,
  );
  const values = new Map([...places].map(([name, place]) => [name, solved.solution[place]!]));

  const linear = (form: LinearForm): LinearEstimate | undefined => {
    const weights = new Float64Array(places.size);
    for (const [name, weight] of form) {
      const place = places.get(name);
      if (place !== undefined) weights[place] = weight;
      else if (weight !== 0) return undefined;
    }
    return solved.estimate(weights);
  };
  const doubtOf = (estimate: LinearEstimate) => ({
    gains: estimate.gains,
    heights: heightGains(estimate, equations, values),
  });

  return {
    checks: equations.map(({ reading }, row) => ({
      reading,
      residual: solved.residuals[row]!,
      redundancy: solved.redundancies[row]!,
    })),
    degreesOfFreedom: rows - solved.rank,
    chiSquare: solved.chiSquare,
    estimate: (form) => {
      const estimate = linear(form);
      if (estimate === undefined) return undefined;
      const doubt = doubtOf(estimate);
      return {
        value: estimate.value,
        standard: Math.sqrt(covarianceOf(doubt, doubt, standards)),
        restsOn: restsOn(estimate, equations, standards),
      };
    },
    covariance: (one, other) => {
      const [first, second] = [linear(one), linear(other)];
      if (first === undefined || second === undefined) return undefined;
      return covarianceOf(doubtOf(first), doubtOf(second), standards);
    },
  };
}

function placesOf(equations: readonly Equation[]): ReadonlyMap<string, number> {
  const places = new Map<string, number>();
  for (const { form } of equations) {
    for (const name of form.keys()) if (!places.has(name)) places.set(name, places.size);
  }
  return places;
}

interface Doubt {
  readonly gains: Float64Array;
  /** Change of the value for one standard uncertainty of each height setting. */
  readonly heights: ReadonlyMap<string, number>;
}

/**
 * A height off by δ shifts each reading of its setting by rate·δ, and the value by gain·rate·δ
 * (GUM 5.1.3). The rates are those of the solution itself.
 */
function heightGains(
  estimate: LinearEstimate,
  equations: readonly Equation[],
  values: ReadonlyMap<string, number>,
): ReadonlyMap<string, number> {
  const totals = new Map<string, number>();
  equations.forEach(({ height }, row) => {
    if (height === undefined) return;
    const shift = estimate.gains[row]! * evaluate(height.rate, values) * height.standard;
    totals.set(height.setting, (totals.get(height.setting) ?? 0) + shift);
  });
  return totals;
}

/** GUM 5.2.2 for two quantities of the same independent inputs. */
function covarianceOf(one: Doubt, other: Doubt, standards: readonly number[]): number {
  let total = 0;
  standards.forEach((standard, row) => {
    total += one.gains[row]! * other.gains[row]! * standard * standard;
  });
  for (const [setting, shift] of one.heights) total += shift * (other.heights.get(setting) ?? 0);
  return total;
}

function restsOn(
  estimate: LinearEstimate,
  equations: readonly Equation[],
  standards: readonly number[],
): ReadonlySet<string> {
  const pulls = equations.map((_, row) => Math.abs(estimate.gains[row]! * standards[row]!));
  const least = NO_GAIN * Math.max(0, ...pulls);
  return new Set(equations.filter((_, row) => pulls[row]! > least).map(({ reading }) => reading));
}
