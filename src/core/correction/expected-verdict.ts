import { studentBelow } from '../statistics/student';
import { decide, type Verdict } from '../verdict/conformity';
import { probabilityOfConformity } from '../verdict/probability';
import type { Zone } from '../zones/zone';

type Known = Pick<Zone, 'parts' | 'covariance' | 'degreesOfFreedom'>;

/**
 * The verdict from the probability that the width of `zone` is no more than `tolerance` µm.
 *
 * That of two parts is an integral, and plans ask for many. But |p| + |q| ≤ T says that none of the
 * four sums ±p ± q is over T: the probability is no more than the least of theirs, and no less than
 * 1 less all that they leave (Boole's inequality). Mostly that decides it.
 */
export function expectedVerdict(zone: Known, tolerance: number, level: number): Verdict {
  if (tolerance < 0) return 'out';
  if (zone.parts.length === 2) {
    const [least, most] = boundsOfProbability(zone, tolerance);
    const [low, high] = [decide(least, level), decide(most, level)];
    if (low === high) return low;
  }
  return decide(probabilityOfConformity(zone, tolerance), level);
}

function boundsOfProbability(
  { parts, covariance, degreesOfFreedom }: Known,
  tolerance: number,
): readonly [least: number, most: number] {
  const [first, second] = parts;
  let [left, most] = [0, 1];
  for (const one of [1, -1]) {
    for (const other of [1, -1]) {
      const mean = one * first!.value + other * second!.value;
      const variance = first!.standard ** 2 + second!.standard ** 2 + 2 * one * other * covariance;
      const room = tolerance - mean;
      const over = overProbability(room, Math.sqrt(Math.max(0, variance)), degreesOfFreedom);
      left += over;
      most = Math.min(most, 1 - over);
    }
  }
  return [Math.max(0, 1 - left), most];
}

/** Probability that something of mean 0 is over `room`. */
function overProbability(room: number, standard: number, degrees: number): number {
  if (standard === 0) return room < 0 ? 1 : 0;
  return studentBelow(-room / standard, degrees);
}
