import type { LinearProgram, ProgramRow } from '../../../../src/core/linear-program/program';
import type { Random } from '../../support/random';

const SENSES = ['<=', '>=', '='] as const;

/** Draws one number of a program. */
type Draw = (random: Random) => number;

export const real: Draw = (random) => random.normal();

/** Small whole numbers, many of them 0: corners at which more rows meet than there are variables. */
export const whole: Draw = (random) => Math.round(random.between(-2.5, 2.5));

export interface Size {
  readonly variables: number;
  readonly rows: number;
}

export function wholeBetween(random: Random, low: number, high: number): number {
  return Math.min(high, Math.floor(random.between(low, high + 1)));
}

/** Up to the size given; a fifth of the variables are free and a tenth of the rows are equations. */
export function anyProgram(random: Random, most: Size, draw: Draw): LinearProgram {
  const variables = wholeBetween(random, 1, most.variables);
  const rows = wholeBetween(random, 0, most.rows);
  const numbers = (count: number) => Array.from({ length: count }, () => draw(random));
  return {
    objectives: [numbers(variables)],
    rows: Array.from({ length: rows }, () => ({
      weights: numbers(variables),
      sense: someSense(random),
      limit: draw(random),
    })),
    free: Array.from({ length: variables }, () => random.between(0, 1) < 0.2),
  };
}

function someSense(random: Random): ProgramRow['sense'] {
  const share = random.between(0, 1);
  return SENSES[share < 0.45 ? 0 : share < 0.9 ? 1 : 2];
}

/**
 * The same with limits and costs drawn anew so that there surely is an optimum: some variables keep
 * to the rows, and some multipliers to the costs. About half the rows meet at those variables.
 */
export function programWithOptimum(random: Random, most: Size, draw: Draw): LinearProgram {
  const { rows, free, objectives } = anyProgram(random, most, draw);
  const point = objectives[0]!;
  const variables = Array.from(point, (value, j) => (free?.[j] ? value : Math.abs(value)));
  const isTight = rows.map(() => random.between(0, 1) < 0.5);
  const kept = rows.map(({ weights, sense }, i): ProgramRow => {
    const total = Array.from(weights).reduce((sum, weight, j) => sum + weight * variables[j]!, 0);
    const room = isTight[i] || sense === '=' ? 0 : Math.abs(draw(random));
    return { weights, sense, limit: sense === '<=' ? total + room : total - room };
  });
  const multipliers = kept.map(({ sense }) => {
    const size = Math.abs(draw(random));
    if (sense === '=') return draw(random);
    return sense === '<=' ? -size : size;
  });
  const costs = variables.map((_, j) => {
    const total = kept.reduce((sum, { weights }, i) => sum + multipliers[i]! * weights[j]!, 0);
    return free?.[j] ? total : total + Math.abs(draw(random));
  });
  return { objectives: [costs], rows: kept, ...(free && { free }) };
}
