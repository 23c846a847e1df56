import { answerOf, type End } from './answer';
import { type Dictionary, firstDictionary, workedOutAfresh } from './dictionary';
import { bringUp, hold, makeLeast, settle } from './phases';
import type { LinearProgram, ProgramAnswer } from './program';
import { scaleProgram } from './scaled-program';

/** Rounding that is won back rarely asks for a further pivot, and more than a few never. */
const MOST_ROUNDS = 8;

/**
 * Solves a small dense linear program by the simplex method, in two phases: the dual one brings the
 * variables to where all rows are kept to, the primal one to where the objectives are least. The
 * answer is worked out afresh from the program at the corner that the pivots have come to, and
 * looked at again from there. The order of rows and variables decides between answers that are
 * equally good.
 *
 * @throws RangeError where the parts of the program disagree or a number is not finite.
 */
export function minimise(program: LinearProgram): ProgramAnswer {
  let dictionary = firstDictionary(scaleProgram(program));
  for (let round = 1; ; round += 1) {
    const end = pivotToTheEnd(dictionary);
    if (dictionary.pivots === 0 || round === MOST_ROUNDS) return answerOf(program, dictionary, end);
    dictionary = workedOutAfresh(dictionary);
  }
}

function pivotToTheEnd(dictionary: Dictionary): End {
  const { objectives, variables, rows } = dictionary.program;
  settle(dictionary);
  const row = bringUp(dictionary);
  if (row >= 0) return { status: 'infeasible', row };
  const held = new Uint8Array(variables + rows);
  for (let objective = 0; objective < objectives.length; objective += 1) {
    const column = makeLeast(dictionary, objective, held);
    if (column >= 0) return { status: 'unbounded', objective, column };
    hold(dictionary, objective, held);
  }
  return { status: 'optimal' };
}
