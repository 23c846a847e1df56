import { integrate } from '../statistics/integrate';
import { normalBetween, normalDensity } from '../statistics/normal';
import { studentBelow, studentDensity } from '../statistics/student';
import type { Zone } from '../zones/zone';

/** Parts of a zone beyond this many standard uncertainties are told from certain by nobody: 1e-12. */
const SPAN_NORMAL = 8;
const SPAN_STUDENT = 400;

/** Far below what is shown. */
const ABSOLUTE_ERROR = 1e-9;

/**
 * Probability that the true width of `zone` is no more than `tolerance` µm (JCGM 106:2012, 6 and 7,
 * with no prior knowledge). What is known of the parts is Student's distribution with the zone's
 * effective degrees of freedom (JCGM 101, 6.4.9), the normal one where these are infinite. With two
 * parts the region |p| + |q| ≤ T is integrated over p, with q distributed as p leaves it.
 */
export function probabilityOfConformity(
  zone: Pick<Zone, 'parts' | 'covariance' | 'degreesOfFreedom'>,
  tolerance: number,
): number {
  const { covariance, degreesOfFreedom } = zone;
  const [first, second] = zone.parts;
  if (first === undefined) throw new RangeError('A zone has at least one part');
  if (second === undefined) {
    return between(-tolerance, tolerance, first.value, first.standard, degreesOfFreedom);
  }
  if (first.standard === 0) {
    const left = tolerance - Math.abs(first.value);
    return between(-left, left, second.value, second.standard, degreesOfFreedom);
  }
  const regression = covariance / first.standard ** 2;
  const spread = Math.sqrt(Math.max(0, second.standard ** 2 - covariance * regression));
  const density = (p: number) => {
    const left = tolerance - Math.abs(p);
    const off = (p - first.value) / first.standard;
    const mean = second.value + regression * (p - first.value);
    const [degrees, widening] = givenFirst(off, degreesOfFreedom);
    const weight = densityAt(off, degreesOfFreedom) / first.standard;
    return weight * between(-left, left, mean, spread * widening, degrees);
  };
  const span = Number.isFinite(degreesOfFreedom) ? SPAN_STUDENT : SPAN_NORMAL;
  const low = Math.max(-tolerance, first.value - span * first.standard);
  const high = Math.min(tolerance, first.value + span * first.standard);
  // In pieces: the integrand bends at 0, where |p| does, and peaks at the value.
  const peak = Math.min(Math.max(first.value, low), high);
  const marks = [low, Math.min(Math.max(0, low), high), peak, high].sort((a, b) => a - b);
  let total = 0;
  for (let i = 1; i < marks.length; i += 1) {
    total += integrate(density, marks[i - 1]!, marks[i]!, ABSOLUTE_ERROR);
  }
  return Math.min(1, Math.max(0, total));
}

/**
 * Of two quantities in one Student's distribution with ν degrees of freedom, the second given the
 * first, which lies `off` standard uncertainties from its mean: ν + 1 degrees, and wider by
 * √((ν + off²)/(ν + 1)) (Kotz and Nadarajah, Multivariate t Distributions, 2004, 1.11).
 */
function givenFirst(off: number, degrees: number): readonly [number, number] {
  if (!Number.isFinite(degrees)) return [degrees, 1];
  return [degrees + 1, Math.sqrt((degrees + off * off) / (degrees + 1))];
}

function densityAt(off: number, degrees: number): number {
  return Number.isFinite(degrees) ? studentDensity(off, degrees) : normalDensity(off);
}

function between(low: number, high: number, mean: number, standard: number, degrees: number) {
  if (!Number.isFinite(degrees) || standard === 0 || high < low) {
    return normalBetween(low, high, mean, standard);
  }
  const upper = studentBelow((high - mean) / standard, degrees);
  return upper - studentBelow((low - mean) / standard, degrees);
}
