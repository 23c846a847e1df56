import type { Material } from '../../statistics/expansion-coefficients';
import type { Tails } from './scatter-shape';

/** What is taken for likely of a shop's rate before any pass was measured. */
export interface RatePrior {
  /** Middle of the typical rate, µm of wedge per second or stroke. */
  readonly median: number;
  /** Standard deviation of the logarithm of the typical rate, above 0. */
  readonly logStandard: number;
  /**
   * Least and greatest scale of the scatter from pass to pass, in the logarithm of the rate: 0.1 is
   * a tenth up or down. Each doubling between them is as likely as another; alike where it is known.
   */
  readonly scatter: readonly [least: number, greatest: number];
  readonly tails: Tails;
  readonly basis: PriorBasis;
}

/** Whether the common practice speaks of this work, or is only the nearest there is. */
export type PriorBasis = 'common practice' | 'other material or abrasive';

/** What is known of the work; what is left out is not known. */
export interface WorkKind {
  readonly per: 'second' | 'stroke';
  readonly material?: Material;
  /** Of the abrasive paper: 320 for P320. */
  readonly grit?: number;
}

/**
 * 'A couple of µm to about 6 µm in 10 s': µm/s, for a hand-sized block of aluminium on 320 to 400
 * grit. Common practice, no source.
 */
const USUAL_RATES = [0.2, 0.6] as const;

const USUAL_GRITS = [320, 400] as const;

const ALUMINIUM: readonly Material[] = [
  'aluminium 2024',
  'aluminium 6061',
  'aluminium 7075',
  'cast aluminium 356',
];

/** Half of a normal distribution lies within so many standard deviations. */
const HALF_WITHIN = 0.6745;

/** Half of all shops are taken to work at the usual rates; the rest are slower or faster. */
const USUAL_SPREAD = Math.log(USUAL_RATES[1] / USUAL_RATES[0]) / 2 / HALF_WITHIN;

/** Steel or a finer paper may well be ten times slower: twice the spread reaches a factor of 15. */
const OTHERWISE_WIDER = 2;

/** A stroke takes a second, or half, or two: half of all hands within that. */
const STROKE_SPREAD = Math.log(2) / HALF_WITHIN;

/**
 * A hand that laps repeats itself no better than within a tenth, what with pressure, speed and the
 * wear of the paper; and one that is off by a factor of e as often as not does not repeat at all.
 * Common practice, no source. It is wide on purpose: passes are soon to say more.
 */
const SCATTER = [0.1, 1] as const;

/**
 * The prior of the rate at which a hand laps a wedge. Common practice, no source; only for
 * aluminium on 320 to 400 grit does even that speak. For all else the middle is the same, the
 * spread twice as wide, and `basis` says so.
 *
 * Passes are taken to scatter like Student's t with 4 degrees of freedom, for a mistyped amount of
 * work or a pass on another paper is no rarity: such a pass then hardly counts, where a normal
 * scatter would follow it. Lange, Little and Taylor, Journal of the American Statistical Association
 * 84 (1989), take 4 where the data are too few to tell (from memory).
 */
export function priorRate({ per, material, grit }: WorkKind): RatePrior {
  const isUsual =
    material !== undefined &&
    ALUMINIUM.includes(material) &&
    grit !== undefined &&
    grit >= USUAL_GRITS[0] &&
    grit <= USUAL_GRITS[1];
  const spread = isUsual ? USUAL_SPREAD : OTHERWISE_WIDER * USUAL_SPREAD;
  return {
    median: Math.sqrt(USUAL_RATES[0] * USUAL_RATES[1]),
    logStandard: per === 'second' ? spread : Math.hypot(spread, STROKE_SPREAD),
    scatter: SCATTER,
    tails: 'student',
    basis: isUsual ? 'common practice' : 'other material or abrasive',
  };
}

/** @throws RangeError where `prior` is none. */
export function refuseNoPrior({
  median,
  logStandard,
  scatter: [least, greatest],
}: RatePrior): void {
  if (!(median > 0 && median < Number.POSITIVE_INFINITY)) {
    throw new RangeError('A rate is above 0');
  }
  if (!(logStandard > 0 && logStandard < Number.POSITIVE_INFINITY)) {
    throw new RangeError('A spread is above 0');
  }
  if (!(least > 0 && greatest >= least && greatest < Number.POSITIVE_INFINITY)) {
    throw new RangeError('A scatter is above 0, its least not above its greatest');
  }
}
