import type { LinearForm } from '../part/linear-form';
import { combined, type Equation } from '../readings/equation';
import { combineDoubt } from '../statistics/effective-degrees';
import type { AlternativeTest } from './alternatives';
import { checksOf, type EquationCheck } from './checks';
import { type Contribution, contributionsTo, type FormValue, sharedEffects } from './contributions';
import { type LeastSquares, type LinearEstimate, solveLeastSquares } from './least-squares';

/** One reading's share in a result: value × weight, summed over all, is the result. */
export interface Term {
  readonly reading: string;
  /** µm, as it went into the adjustment. */
  readonly value: number;
  readonly weight: number;
}

/** A quantity that the readings fix. Its unit is that of the form asked for. */
export interface Estimate {
  readonly value: number;
  /** Standard uncertainty, the doubt that readings share included. */
  readonly standard: number;
  /** Effective degrees of freedom (GUM G.4.1); Infinity where every doubt is taken for certain. */
  readonly degreesOfFreedom: number;
  /** Where the uncertainty comes from, greatest first. */
  readonly contributions: readonly Contribution[];
  /** The readings that the value rests on, and how. */
  readonly terms: readonly Term[];
  /** Ids of the same. */
  readonly restsOn: ReadonlySet<string>;
}

/** All readings of an inspection, adjusted at once. */
export interface Adjustment {
  readonly checks: readonly EquationCheck[];
  /** Equations less what they settle: how many say something twice. */
  readonly degreesOfFreedom: number;
  readonly chiSquare: number;
  /** The value of `form` alone, or undefined where the readings do not fix it. */
  valueOf(form: LinearForm): number | undefined;
  /** The same with its uncertainty. */
  estimate(form: LinearForm): Estimate | undefined;
  /** Covariance of two forms, in the product of their units; undefined where either is not fixed. */
  covariance(one: LinearForm, other: LinearForm): number | undefined;
  /**
   * The test of an error that would shift the readings by so many µm, by their ids, for each unit of
   * its size; undefined where the readings barely show it. Its correlations are in the order of `checks`.
   */
  test(effects: ReadonlyMap<string, number>): AlternativeTest | undefined;
}

/** Gains below this part of the greatest are rounding: the value does not rest on that reading. */
const NO_GAIN = 1e-9;

/**
 * Weighted least squares over `equations`, of whatever mix of readings. No reading at all fixes nothing.
 *
 * @param known values of forms to reckon shared doubts with, in place of the solution's own: for
 *   readings that are not taken yet, whose values say nothing.
 */
export function adjust(equations: readonly Equation[], known?: FormValue): Adjustment {
  const places = placesOf(equations);
  const standards = equations.map((equation) => combined(equation.components));
  const solved = solve(equations, places, standards);
  const linear = (form: LinearForm) => {
    const weights = weightsOf(form, places);
    return weights && solved.estimate(weights);
  };
  const solvedValue = (form: LinearForm) => {
    if (isNothing(form)) return 0;
    const weights = weightsOf(form, places);
    return weights && solved.value(weights);
  };
  const valueAt = known ?? solvedValue;
  return {
    checks: checksOf(equations, standards, solved),
    degreesOfFreedom: equations.length - solved.rank,
    chiSquare: solved.chiSquare,
    valueOf: solvedValue,
    estimate: (form) => {
      const estimate = linear(form);
      if (estimate === undefined) return undefined;
      const contributions = contributionsTo(estimate.gains, equations, valueAt);
      const terms = termsOf(estimate, equations, standards);
      const restsOn = new Set(terms.map(({ reading }) => reading));
      return {
        value: estimate.value,
        ...combineDoubt(contributions),
        contributions,
        terms,
        restsOn,
      };
    },
    covariance: (one, other) => {
      const [first, second] = [linear(one), linear(other)];
      if (first === undefined || second === undefined) return undefined;
      const [firstShared, secondShared] = [first, second].map(({ gains }) =>
        sharedEffects(gains, equations, valueAt),
      );
      let total = 0;
      standards.forEach((standard, row) => {
        total += first.gains[row]! * second.gains[row]! * standard * standard;
      });
      for (const [source, { effect }] of firstShared!) {
        total += effect * (secondShared!.get(source)?.effect ?? 0);
      }
      return total;
    },
    test: (effects) => solved.test(equations.map(({ reading }) => effects.get(reading) ?? 0)),
  };
}

function placesOf(equations: readonly Equation[]): ReadonlyMap<string, number> {
  const places = new Map<string, number>();
  for (const { form } of equations) {
    for (const name of form.keys()) if (!places.has(name)) places.set(name, places.size);
  }
  return places;
}

function solve(
  equations: readonly Equation[],
  places: ReadonlyMap<string, number>,
  standards: readonly number[],
): LeastSquares {
  const rows = equations.length;
  const matrix = new Float64Array(rows * places.size);
  equations.forEach((equation, row) => {
    for (const [name, weight] of equation.form) matrix[row + places.get(name)! * rows] = weight;
  });
  const observations = equations.map((equation) => equation.value);
  return solveLeastSquares(matrix, observations, standards);
}

/** The form as a row of weights; undefined where no equation knows one of its unknowns. */
function weightsOf(
  form: LinearForm,
  places: ReadonlyMap<string, number>,
): Float64Array | undefined {
  const weights = new Float64Array(places.size);
  for (const [name, weight] of form) {
    const place = places.get(name);
    if (place !== undefined) weights[place] = weight;
    else if (weight !== 0) return undefined;
  }
  return weights;
}

function isNothing(form: LinearForm): boolean {
  return [...form.values()].every((weight) => weight === 0);
}

function termsOf(
  estimate: LinearEstimate,
  equations: readonly Equation[],
  standards: readonly number[],
): readonly Term[] {
  const pulls = equations.map((_, row) => Math.abs(estimate.gains[row]! * standards[row]!));
  const least = NO_GAIN * Math.max(0, ...pulls);
  return equations.flatMap(({ reading, value }, row) =>
    pulls[row]! > least ? [{ reading, value, weight: estimate.gains[row]! }] : [],
  );
}
