import { chiSquareQuantile } from './chi-square';

/** A standard deviation and the degrees of freedom that it is known with. */
export interface Spread {
  readonly standard: number;
  /** 1 or more; Infinity for one that is taken for certain. */
  readonly degreesOfFreedom: number;
}

/**
 * Repeatability from readings repeated in groups, one group for each thing read: how far readings
 * of a group scatter about their own mean, all groups together (GUM 4.2.4, H.3.6, H.5.2.2). In the
 * unit of the readings; undefined where no group has two.
 *
 * @throws RangeError where a reading is not finite.
 */
export function repeatability(groups: readonly (readonly number[])[]): Spread | undefined {
  let squares = 0;
  let degreesOfFreedom = 0;
  for (const group of groups) {
    if (!group.every(Number.isFinite)) throw new RangeError('A reading is not finite');
    if (group.length < 2) continue;
    squares += squaresAboutMean(group);
    degreesOfFreedom += group.length - 1;
  }
  if (degreesOfFreedom === 0) return undefined;
  return { standard: Math.sqrt(squares / degreesOfFreedom), degreesOfFreedom };
}

/**
 * One spread from several of the same kind, each weighted with its degrees of freedom:
 * s² = Σνᵢsᵢ²/Σνᵢ (GUM H.3.6 and 4.2.4). Undefined where there is none.
 *
 * @throws RangeError where one is taken for certain: then there is nothing to pool.
 */
export function pooled(spreads: readonly Spread[]): Spread | undefined {
  let squares = 0;
  let degreesOfFreedom = 0;
  for (const spread of spreads) {
    refuseNonsense(spread);
    squares += spread.degreesOfFreedom * spread.standard ** 2;
    degreesOfFreedom += spread.degreesOfFreedom;
  }
  if (degreesOfFreedom === Number.POSITIVE_INFINITY) {
    throw new RangeError('What is certain is not pooled');
  }
  if (degreesOfFreedom === 0) return undefined;
  return { standard: Math.sqrt(squares / degreesOfFreedom), degreesOfFreedom };
}

/**
 * A spread is known to a quarter of itself with 8 degrees of freedom (GUM G.4.2), which is as well
 * as a judgement can hope to be.
 */
export const ENOUGH_DEGREES = 8;

/** An observed spread as large as this part of what chance allows is not put down to chance. */
const SURELY_LARGER = 0.95;

/** The spread to reckon with, and where it is from. */
export interface ChosenSpread extends Spread {
  readonly from: 'stated' | 'observed';
}

/**
 * Which of two spreads of the same kind to reckon with: the one `stated` beforehand, by a default
 * or a judgement (Type B), or the one `observed` in repeats (Type A). The observed one replaces it
 *
 * - once it is known as well: with the degrees of freedom of the stated one, or `ENOUGH_DEGREES`
 *   where that has more or is taken for certain; or
 * - at once, where it is larger than chance allows: ν·s²/(σ² + σr²) above the 95 % point of
 *   chi-square, where σr, `ofReading`, is the standard deviation that reading itself adds to the
 *   repeats: two that are one step of the indicator apart are no sign of a bad seating.
 *   (The doubt in the stated one is left out of this test, which errs to the larger spread.)
 *
 * So a few lucky repeats never make the doubt smaller, and a few bad ones make it larger.
 * The rule is ours; its parts are from GUM G.4.2 and the chi-square test of a variance
 * (NIST/SEMATECH e-Handbook 1.3.5.8).
 *
 * An observed spread holds what resolution adds to it; counting resolution as well is on the safe
 * side. It is 0 where the repeats all read the same, and then resolution is all that is left.
 */
export function chooseSpread(
  stated: Spread,
  observed: Spread | undefined,
  ofReading = 0,
): ChosenSpread {
  refuseNonsense(stated);
  if (observed === undefined) return { ...stated, from: 'stated' };
  refuseNonsense(observed);
  const enough = Math.min(ENOUGH_DEGREES, stated.degreesOfFreedom);
  const known = observed.degreesOfFreedom >= enough || isLarger(stated, observed, ofReading);
  return known ? { ...observed, from: 'observed' } : { ...stated, from: 'stated' };
}

function isLarger(
  stated: Spread,
  { standard, degreesOfFreedom }: Spread,
  ofReading: number,
): boolean {
  const most = chiSquareQuantile(SURELY_LARGER, degreesOfFreedom);
  return degreesOfFreedom * standard ** 2 > most * (stated.standard ** 2 + ofReading ** 2);
}

/** Taken from the first reading, so that equal readings leave exactly nothing. */
function squaresAboutMean(group: readonly number[]): number {
  const from = group.map((reading) => reading - group[0]!);
  const mean = from.reduce((total, one) => total + one, 0) / group.length;
  return from.reduce((total, one) => total + (one - mean) ** 2, 0);
}

function refuseNonsense({ standard, degreesOfFreedom }: Spread): void {
  if (!(standard >= 0 && standard < Number.POSITIVE_INFINITY)) {
    throw new RangeError('A standard deviation is 0 or more');
  }
  if (!(degreesOfFreedom >= 1)) throw new RangeError('Degrees of freedom are 1 or more');
}
