import type { LearnedRate, Range } from './learn-rate';

/** How long to work before reading again. */
export interface NextPass {
  /** Seconds or strokes. */
  readonly amount: number;
  /** The wedge that this will likely take off, µm, with the interval of the learned rate. */
  readonly removal: Range;
}

/**
 * The longest pass that takes off no more than `wedge` µm with the probability that the rate was
 * learned for: 90 %. The first pass, before anything was measured, as any later one.
 *
 * @param wedge what is still to come off, µm
 * @throws RangeError where nothing is to come off.
 */
export function nextPass(
  wedge: number,
  { upper, next }: Pick<LearnedRate, 'upper' | 'next'>,
): NextPass {
  if (!(wedge > 0 && wedge < Number.POSITIVE_INFINITY)) {
    throw new RangeError('Nothing is to come off');
  }
  const amount = wedge / upper;
  return {
    amount,
    removal: {
      low: amount * next.low,
      median: amount * next.median,
      high: amount * next.high,
    },
  };
}
