import { normalBelow, normalDensity } from '../../statistics/normal';

/** How the logarithms of single passes lie about that of the typical rate, in scales of the scatter. */
export interface ScatterShape {
  /** Density at `z`. */
  density(z: number): number;
  /** The part below `z`. */
  below(z: number): number;
}

export type Tails = 'student' | 'normal';

/**
 * Student's distribution with 4 degrees of freedom, in closed form: the density, and A&S 26.7.4 for
 * the part below, written so that a small tail keeps its digits.
 */
const STUDENT_OF_FOUR: ScatterShape = {
  density(z) {
    const share = 1 / (1 + 0.25 * z * z);
    return 0.375 * share * share * Math.sqrt(share);
  },
  below(z) {
    const share = 1 / (1 + 0.25 * z * z);
    const within = Math.sqrt(1 - share) * (1 + share / 2);
    const beyond = (share * share * (3 + share)) / (8 * (1 + within));
    return z < 0 ? beyond : 1 - beyond;
  },
};

const NORMAL: ScatterShape = { density: normalDensity, below: normalBelow };

export function shapeOf(tails: Tails): ScatterShape {
  return tails === 'student' ? STUDENT_OF_FOUR : NORMAL;
}
