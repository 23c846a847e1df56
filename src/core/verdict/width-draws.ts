import type { Random } from '../statistics/random';
import type { Zone } from '../zones/zone';
import type { FormPoint } from '../zones/zone-with-form';
import { noiseOf } from './reading-noise';

/** What is known of the parts of a zone, as in `Zone`: one part or two. */
export type KnownParts = Pick<Zone, 'parts' | 'covariance' | 'degreesOfFreedom'>;

/**
 * Draws of the width of a zone with the form at `points`, µm: `widthWithForm` of parts and residuals
 * as the readings may have meant them. Fills a row of draws without taking memory for any.
 */
export function widthDraws(
  known: KnownParts,
  points: readonly FormPoint[],
  random: Random,
): (into: Float64Array) => void {
  const count = points.length;
  const drawParts = partsOf(known, random);
  const drawNoise = noiseOf(points, random);
  const parts = new Float64Array(2);
  const noise = new Float64Array(count);
  const residuals = Float64Array.from(points, ({ residual }) => residual);
  // With one part the second is 0, whatever its share.
  const first = Float64Array.from(points, ({ shares }) => shares[0]!);
  const second = Float64Array.from(points, ({ shares }) => shares[1] ?? 0);
  const width = () => {
    drawParts(parts);
    drawNoise(noise);
    const [p, q] = [parts[0]!, parts[1]!];
    let highest = (Math.abs(p) + Math.abs(q)) / 2;
    let lowest = -highest;
    for (let i = 0; i < count; i += 1) {
      const height = residuals[i]! + noise[i]! + p * first[i]! + q * second[i]!;
      if (height > highest) highest = height;
      else if (height < lowest) lowest = height;
    }
    return highest - lowest;
  };
  return (into) => {
    for (let i = 0; i < into.length; i += 1) into[i] = width();
  };
}

/**
 * Draws of the parts from Student's distribution, shifted and scaled (JCGM 101, 6.4.9), normal where
 * the degrees of freedom are infinite. Two parts are in one such distribution: the second, given the
 * first t from its mean, has a degree more and is wider by √((ν + t²)/(ν + 1)) (Kotz and Nadarajah,
 * Multivariate t Distributions, 2004, 1.11), just as `probabilityOfConformity` has it.
 */
function partsOf(known: KnownParts, random: Random): (into: Float64Array) => void {
  const { covariance, degreesOfFreedom: degrees } = known;
  const first = known.parts[0]!;
  const second = known.parts[1];
  if (second === undefined) {
    return (into) => {
      into[0] = first.value + first.standard * random.student(degrees);
    };
  }
  const shift = first.standard === 0 ? 0 : covariance / first.standard;
  const spread = Math.sqrt(Math.max(0, second.standard ** 2 - shift * shift));
  const isNormal = degrees === Number.POSITIVE_INFINITY;
  return (into) => {
    const t = random.student(degrees);
    const wider = isNormal ? 1 : Math.sqrt((degrees + t * t) / (degrees + 1));
    into[0] = first.value + first.standard * t;
    into[1] = second.value + shift * t + spread * wider * random.student(degrees + 1);
  };
}
