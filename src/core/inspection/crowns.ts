import { type Adjustment, adjust, type Estimate } from '../adjustment/adjustment';
import type { AlternativeTest } from '../adjustment/alternatives';
import { type EquationCheck, suspectsAmong } from '../adjustment/checks';
import type { Block } from '../part/block';
import { scaled, sum, unknown } from '../part/linear-form';
import type { Equation } from '../readings/equation';
import type { Reading } from '../readings/reading';
import { type CrownShape, crownShapes } from './crown-shapes';

/** A face that does not fit its plane, as a crown explains it. */
export interface CrownAnswer extends Omit<CrownShape, 'effects'> {
  /** How far the middle stands out over the ends, over the span, µm: + crowned, - hollow. */
  readonly rise: Estimate;
  /** Ids of the readings that it touches. */
  readonly readings: readonly string[];
  /** The readings a slip in one of which would explain it as well; none where the crown does so clearly better. */
  readonly orSlip: readonly EquationCheck[];
}

/** What explains readings that do not agree. */
export interface Disagreements {
  readonly crowns: readonly CrownAnswer[];
  /** Readings that do not agree with the others, the crowns reckoned with; several where they cannot be told apart. */
  readonly suspects: readonly EquationCheck[];
}

/**
 * Holds a crown of each face that was read closely enough beside a slip in each reading, one alternative
 * at a time (data snooping: Baarda, 1968; Teunissen, Testing Theory, 2000; from memory). Of all that
 * pass `limit` a crown is taken where it explains more than a slip, or cannot be told from it; then it
 * is reckoned with, and the rest judged afresh. Where a slip explains clearly more, it comes first.
 *
 * @param equations of `readings`, with the seating that single readings are judged by.
 * @param judged the adjustment of them.
 */
export function disagreementsAmong(
  equations: readonly Equation[],
  judged: Adjustment,
  readings: readonly Reading[],
  block: Block,
  limit: number,
): Disagreements {
  const found: Crown[] = [];
  let now = judged;
  const shapes = crownShapes(readings, block);
  for (;;) {
    const likely = likeliest(shapes, now, limit);
    if (likely === undefined) break;
    const { shape, test } = likely;
    const then = adjust(withCrowns(equations, [...found.map((one) => one.shape), shape]));
    // A doubt that readings share, as in a height, is not in the weights: it must not pass for a crown.
    const rise = then.estimate(riseOf(shape));
    if (rise === undefined || Math.abs(rise.value) <= limit * rise.standard) break;
    found.push({ shape, orSlip: orSlipIn(now.checks, test, limit) });
    now = then;
  }
  const suspects = suspectsAmong(now.checks, limit);
  return { crowns: found.map((crown) => answerOf(crown, now, suspects)), suspects };
}

interface Crown {
  readonly shape: CrownShape;
  readonly orSlip: readonly EquationCheck[];
}

/** The crown that explains most; undefined where none is beyond the limit, or a slip explains clearly more. */
function likeliest(shapes: readonly CrownShape[], now: Adjustment, limit: number) {
  let best: { shape: CrownShape; test: AlternativeTest } | undefined;
  for (const shape of shapes) {
    const test = now.test(shape.effects);
    const most = Math.max(limit, Math.abs(best?.test.statistic ?? 0));
    if (test !== undefined && Math.abs(test.statistic) > most) best = { shape, test };
  }
  if (best === undefined) return undefined;
  const { statistic, correlations } = best.test;
  const isBeaten = now.checks.some(({ standardised = 0 }, row) =>
    explainsMore(standardised, statistic, correlations[row]!, limit),
  );
  return isBeaten ? undefined : best;
}

/** The readings beyond the limit that the crown does not explain clearly more than. */
function orSlipIn(
  checks: readonly EquationCheck[],
  { statistic, correlations }: AlternativeTest,
  limit: number,
): readonly EquationCheck[] {
  return checks.filter(
    ({ standardised = 0 }, row) =>
      Math.abs(standardised) > limit &&
      !explainsMore(statistic, standardised, correlations[row]!, limit),
  );
}

/** The 95 % point of the normal distribution, one-sided. */
const CLEARLY = 1.645;

/** Correlations this near to 1 are 1 but for rounding: nothing tells the two apart. */
const ALIKE = 1e-6;

/**
 * Whether of two alternatives the one explains clearly more than the other. Their standardised
 * statistics differ, taken with like signs, with the variance 2(1 - |ρ|); and with one of them taken as
 * true, the other's becomes (w - ρ·w')/√(1 - ρ²). The rule is ours; its parts are those of the
 * separability of two alternatives (Förstner, Reliability and discernability of extended Gauss-Markov
 * models, 1983; from memory).
 */
function explainsMore(one: number, other: number, correlation: number, limit: number): boolean {
  const apart = 1 - Math.abs(correlation);
  if (apart < ALIKE) return false;
  if (Math.abs(one) - Math.abs(other) > CLEARLY * Math.sqrt(2 * apart)) return true;
  const beside = (w: number, taken: number) =>
    Math.abs(w - correlation * taken) / Math.sqrt(1 - correlation ** 2);
  return beside(one, other) > limit && beside(other, one) <= limit;
}

function riseOf({ of, face, along }: CrownShape) {
  return unknown(`rise of the ${of} of ${face} along ${along}`);
}

function withCrowns(
  equations: readonly Equation[],
  shapes: readonly CrownShape[],
): readonly Equation[] {
  return equations.map((equation) => ({
    ...equation,
    form: sum(
      equation.form,
      ...shapes.map((shape) => scaled(riseOf(shape), shape.effects.get(equation.reading) ?? 0)),
    ),
  }));
}

function answerOf(
  { shape, orSlip }: Crown,
  now: Adjustment,
  suspects: readonly EquationCheck[],
): CrownAnswer {
  const { effects, ...where } = shape;
  const named = new Set(suspects.map(({ reading }) => reading));
  return {
    ...where,
    rise: now.estimate(riseOf(shape))!,
    readings: [...effects.keys()],
    orSlip: orSlip.filter(({ reading }) => !named.has(reading)),
  };
}
