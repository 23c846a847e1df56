import type { Zone } from '../zones/zone';
import { integrate } from './integrate';
import { normalBetween, normalDensity } from './normal';

/** Half the span of the integral, in standard deviations: what lies beyond is below 1e-15. */
const SPAN = 8;

const ABSOLUTE_ERROR = 1e-10;

/**
 * Probability that the true width of `zone` is no more than `tolerance` µm, its parts being
 * normal (JCGM 106:2012, 6 and 7, with no prior knowledge). With two parts the region
 * |p| + |q| ≤ T is integrated over p, with q normal given p.
 */
export function probabilityOfConformity(zone: Zone, tolerance: number): number {
  const [first, second] = zone.parts;
  if (first === undefined) throw new RangeError('A zone has at least one part');
  if (second === undefined) {
    return normalBetween(-tolerance, tolerance, first.value, first.standard);
  }
  if (first.standard === 0) {
    const left = tolerance - Math.abs(first.value);
    return normalBetween(-left, left, second.value, second.standard);
  }
  const regression = zone.covariance / first.standard ** 2;
  const spread = Math.sqrt(Math.max(0, second.standard ** 2 - zone.covariance * regression));
  const density = (p: number) => {
    const left = tolerance - Math.abs(p);
    const mean = second.value + regression * (p - first.value);
    const weight = normalDensity((p - first.value) / first.standard) / first.standard;
    return weight * normalBetween(-left, left, mean, spread);
  };
  const low = Math.max(-tolerance, first.value - SPAN * first.standard);
  const high = Math.min(tolerance, first.value + SPAN * first.standard);
  // In two pieces: the integrand bends at 0, where |p| does.
  const total =
    integrate(density, low, Math.min(0, high), ABSOLUTE_ERROR) +
    integrate(density, Math.max(0, low), high, ABSOLUTE_ERROR);
  return Math.min(1, Math.max(0, total));
}
