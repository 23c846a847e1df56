import { type Columns, errorAt, type Factors, takeOff, worstAt } from '../columns';
import { greatestSize } from '../vectors';
import { leaving } from './column-order';
import {
  appendRow,
  type FitProblem,
  level,
  type Member,
  type Reference,
  referenceOf,
} from './reference';
import { startingReference } from './starting-reference';

/** The fit whose greatest error is least. */
export interface MinimaxFit {
  /** The greatest error, in the unit of the observations. */
  readonly deviation: number;
  readonly factors: Factors;
  /** Observation less fitted value. */
  readonly residuals: Float64Array;
  /**
   * The observations that hold the fit, with multipliers whose sizes come to 1 and whose signs are
   * those of the residuals. Σ multiplier·row = 0 and Σ multiplier·observation = `deviation`: no
   * fit has a lesser greatest error (Cheney, Introduction to Approximation Theory, 1966, ch. 1).
   */
  readonly contacts: readonly { readonly index: number; readonly multiplier: number }[];
}

/** Part of the observations by which an error may be above the deviation for rounding. */
const ROUNDING = 1e-13;

/** Multipliers below this are 0 but for rounding. */
const NO_HOLD = 1e-13;

/**
 * The minimax, Chebyshev or L-infinity fit Σ factor·column to `observations` by Stiefel's
 * exchange (Numerische Mathematik 1, 1959; as a simplex method, ibid. 2, 1960): the errors of a
 * reference are levelled, the observation with the greatest error enters and one leaves, so that
 * the deviation grows. One exchange is one pass over the observations.
 *
 * It ends: no reference is taken twice while the deviation does not grow. The column order sees to
 * that; should rounding bring one back all the same, what is left is rounding, and it is the
 * answer.
 *
 * @param columns one for each unknown, independent.
 * @throws RangeError where the columns are not so, or leave no observation over.
 */
export function minimaxFit(columns: Columns, observations: Float64Array): MinimaxFit {
  if (observations.length <= columns.count) {
    throw new RangeError('A minimax fit needs more observations than unknowns');
  }
  const problem: FitProblem = { columns, observations };
  const greatest = greatestSize(observations);
  const rounding = ROUNDING * greatest;
  let seen: string[] = [];
  let highest = Number.NEGATIVE_INFINITY;
  let reference = startingReference(problem, greatest);
  for (;;) {
    const { deviation, factors } = level(problem, reference);
    const index = worstAt(columns, factors, observations);
    const error = errorAt(columns, factors, observations, index);
    const entering: Member = { index, sign: error < 0 ? -1 : 1 };
    const isLeast = Math.abs(error) <= deviation + rounding || holds(reference, entering);
    if (isLeast || (deviation <= highest && seen.includes(nameOf(reference)))) {
      const residuals = new Float64Array(observations.length);
      takeOff(columns, factors, observations, residuals);
      return { deviation, factors, residuals, contacts: contactsOf(reference) };
    }
    if (deviation > highest) seen = [];
    else seen.push(nameOf(reference));
    highest = Math.max(highest, deviation);
    reference = exchanged(problem, reference, entering);
  }
}

/** The errors of a reference are level: what one of its own is above the deviation is rounding. */
function holds({ members }: Reference, { index, sign }: Member): boolean {
  return members.some((member) => member.index === index && member.sign === sign);
}

function exchanged(problem: FitProblem, reference: Reference, entering: Member): Reference {
  const after = reference.members.slice();
  after[leaving(reference, pullsOf(problem, reference, entering))] = entering;
  return referenceOf(problem, after);
}

/** Part of the terms of a pull below which it is what their rounding leaves. */
const NO_PULL = 1e-12;

/**
 * What each multiplier of the reference loses for one unit of that of the member that enters; they
 * come to 1. A pull that is only rounding is 0, unless all are: the member that it belongs to may
 * not leave, for the others and the one that enters would not hold a fit.
 */
function pullsOf({ columns }: FitProblem, { members, inverse }: Reference, entering: Member) {
  const size = members.length;
  const row: number[] = [];
  appendRow(columns, entering, row);
  const pulls: number[] = [];
  const sure: number[] = [];
  for (let i = 0; i < size; i += 1) {
    let pull = 0;
    let terms = 0;
    for (let j = 0; j < size; j += 1) {
      const term = inverse[j * size + i]! * row[j]!;
      pull += term;
      terms += Math.abs(term);
    }
    pulls.push(pull);
    sure.push(Math.abs(pull) > NO_PULL * terms ? pull : 0);
  }
  return sure.some((pull) => pull > 0) ? sure : pulls;
}

function contactsOf({ members, inverse }: Reference): MinimaxFit['contacts'] {
  const contacts: { index: number; multiplier: number }[] = [];
  for (let i = 0; i < members.length; i += 1) {
    const { index, sign } = members[i]!;
    const multiplier = inverse[i]!;
    if (multiplier > NO_HOLD) contacts.push({ index, multiplier: sign * multiplier });
  }
  return contacts;
}

function nameOf({ members }: Reference): string {
  return members.map(({ index, sign }) => sign * (index + 1)).join();
}
