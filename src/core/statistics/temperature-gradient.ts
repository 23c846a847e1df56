/*
 * What a block does to its squareness that is warmer on one side than on the other.
 *
 * Let the temperature rise evenly by ΔT over the block's length W in x, and let H be its height in
 * z. A free block in such a field has no stress: every mm grows by k·x, k = α·ΔT/W, and the
 * displacements (of first order, the centre held)
 *
 *     u_x = k·(x² - z²)/2        u_z = k·x·z
 *
 * give that growth in x and in z with no shear between them. So
 *
 * - the faces across the warmth (x constant: the cool and the warm one) bow, u_x = -k·z²/2 and a
 *   constant, both the same way: circles of the radius 1/k, the cool face hollow and the warm one
 *   round. The bow over H is k·H²/8. The thickness between them does not change.
 * - the faces along the warmth (z constant: the bottom and the top) stay flat and turn, by the slope
 *   k·z. At z = ±H/2 that is k·H/2 each, apart towards the warm side: the block tapers by k·H.
 * - each corner itself stays a right angle, for nothing shears. But the chord of a bowed face stands
 *   as it did (u_x is the same at ±H/2), while the bottom has turned by k·H/2. So, on its bottom,
 *   the warm face leans inward by k·H/2 and the cool face outward by as much: their sum is 0, as the
 *   thickness between them has not changed. It is the angle between tangent and chord of an arc H
 *   long on the radius 1/k.
 *
 * Warmth that rises in z instead, as in a block just set down on a cold plate, is the same with x
 * and z exchanged: the sides stay flat, and both lean outward by k·W/2 on the chord of the bottom,
 * k = α·ΔT/H. So either way the lean is α·ΔT·across/(2·along).
 */

/** How a difference of temperature lies in a section of a block. */
export interface Gradient {
  /** Linear coefficient of expansion, 10⁻⁶ per K. */
  readonly coefficient: number;
  /** How much warmer one face is than its opposite, K. */
  readonly difference: number;
  /** From the cool face to the warm one, mm. */
  readonly along: number;
  /** The other size in the section, mm. */
  readonly across: number;
}

/** 10⁻⁶ mm/mm is 10⁻³ µm/mm. */
const NANO = 1e-3;

/**
 * Growth of the thickness between the two faces that lie along the warmth, going to the warm face,
 * µm/mm.
 *
 * @throws RangeError where a size is not above 0, or a number is not finite.
 */
export function taperByWarmth(gradient: Gradient): number {
  const { coefficient, difference, along, across } = gradient;
  if (![coefficient, difference, along, across].every(Number.isFinite)) {
    throw new RangeError('A number is not finite');
  }
  if (!(along > 0 && across > 0)) throw new RangeError('A size is above 0');
  return (coefficient * difference * across * NANO) / along;
}

/**
 * Out-of-square between a bowed face, over its whole length, and a face that lies along the warmth,
 * µm/mm: half the taper. At the cool face it is obtuse (positive), at the warm face acute: change
 * the sign there.
 */
export function leanByWarmth(gradient: Gradient): number {
  return taperByWarmth(gradient) / 2;
}

/** How far the faces across the warmth are bowed, µm: the cool one hollow, the warm one round. */
export function bowByWarmth(gradient: Gradient): number {
  return (taperByWarmth(gradient) * gradient.across) / 8;
}

/**
 * Standard uncertainty of an out-of-square from warmth, µm/mm, where all that is known is that the
 * two faces are within ±`difference` K of each other (rectangular, GUM 4.3.7). Twice this is that
 * of a taper.
 */
export function leanUncertainty(gradient: Gradient): number {
  return Math.abs(leanByWarmth(gradient)) / Math.sqrt(3);
}
