/** The ways to take stock off a face. */
export const METHODS = ['lap', 'grind', 'machine'] as const;
export type Method = (typeof METHODS)[number];

/** Finest and coarsest Ra that a process usually leaves, µm. */
export type FinishRange = readonly [finest: number, coarsest: number];

/** The trade's saying: an Ra of 0.2 µm is a lapped finish. Common practice, no source. */
export const LAPPED_FINISH = 0.2;

/** The trade's saying: the finest that is turned is an Ra of about 0.4 µm. Common practice, no source. */
const FINEST_TURNED = 0.4;

/**
 * What each way usually leaves: usual ranges, not limits, of a chart of the kind of the appendix to
 * ASME B46.1, which several public charts agree with; seen second-hand. Machining is from the finest
 * of turning, a block faced in a four-jaw chuck, to the coarsest of milling.
 */
export const USUAL_FINISHES: Readonly<Record<Method, FinishRange>> = {
  lap: [0.05, 0.4],
  grind: [0.1, 1.6],
  machine: [FINEST_TURNED, 6.3],
};
