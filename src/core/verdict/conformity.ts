/** What the readings say of a requirement. */
export type Verdict = 'in' | 'out' | 'too close to call';

/** How sure is sure: the least probability for a verdict of in or out. ISO 14253-1 takes 95 %. */
export const DEFAULT_LEVEL = 0.95;

/**
 * The three-valued verdict from a probability of conformity (JCGM 106:2012, 7 and 8).
 *
 * @throws RangeError where `level` is not above 0.5 and below 1: in and out would overlap.
 */
export function decide(probability: number, level = DEFAULT_LEVEL): Verdict {
  if (!(level > 0.5 && level < 1)) throw new RangeError('The level lies between 0.5 and 1');
  if (probability >= level) return 'in';
  if (probability <= 1 - level) return 'out';
  return 'too close to call';
}
