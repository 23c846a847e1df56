import type { Expansion } from './expansion-coefficients';

/** The temperature at which sizes on a drawing hold, °C (ISO 1). */
const REFERENCE_TEMPERATURE = 20;

/** 10⁻⁶ per K times mm is nm; a thousand of them are a µm. */
const NANOMETRES = 1e-3;

/** Something made of one material, all of it at one temperature, °C. */
export interface Warm {
  readonly material: Pick<Expansion, 'coefficient'>;
  readonly temperature: number;
}

/** How much longer `length` mm of a material is at `temperature` °C than at 20 °C, in µm. */
export function growth(length: number, { material, temperature }: Warm): number {
  return length * material.coefficient * (temperature - REFERENCE_TEMPERATURE) * NANOMETRES;
}

/**
 * How much too long a part reads, in µm over `length` mm, when it is measured against a scale that
 * is not of its material or not at its temperature, and neither is at 20 °C (GUM H.1.2, to first
 * order).
 */
export function growthAgainst(length: number, part: Warm, scale: Warm): number {
  return growth(length, part) - growth(length, scale);
}

/**
 * Standard uncertainty of `growth`, µm: the coefficient is anywhere within its half-width, the
 * temperature has the standard uncertainty `standard` K (GUM 5.1.2 and 4.3.7).
 *
 * @throws RangeError where `standard` is below 0.
 */
export function growthUncertainty(
  length: number,
  material: Pick<Expansion, 'coefficient' | 'halfWidth'>,
  temperature: number,
  standard: number,
): number {
  if (!(standard >= 0)) throw new RangeError('A standard uncertainty is 0 or more');
  const rise = temperature - REFERENCE_TEMPERATURE;
  const ofMaterial = (material.halfWidth / Math.sqrt(3)) * rise;
  const ofTemperature = material.coefficient * standard;
  return Math.abs(length) * NANOMETRES * Math.hypot(ofMaterial, ofTemperature);
}
