/*
 * A lever-type indicator reads true only with its lever along the face: at an angle it reads more
 * than the face moved, by one over the cosine. Angles in degrees.
 */

const RADIANS = Math.PI / 180;

/**
 * How far the face moved, in the unit and with the sign of `reading`: reading × cos(angle), the
 * angle being that between lever and face. Handbook practice, found in two trade tables; tips made
 * to correct themselves, and levers made to read true at another angle, are not meant.
 *
 * @throws RangeError where the angle is not within ±90°, or the reading is not finite.
 */
export function leverMovement(reading: number, angle: number): number {
  refuseNonsense(reading, angle);
  return reading * Math.cos(angle * RADIANS);
}

/**
 * Standard uncertainty of `leverMovement`, in the unit of the reading, where the angle lies
 * anywhere within ±`within` of the one stated:
 *
 *     |reading|·√(sin²(angle)·δ²/3 + cos²(angle)·δ⁴/20)
 *
 * The first part is GUM 5.1.2 with a rectangular angle; the second is all there is at 0°, where
 * the cosine changes by δ²/2 to one side only (the cosine error of GUM F.2.4.4). Both are the
 * leading terms of the root mean square error: right to 1 % up to ±15°.
 *
 * @throws RangeError where the angle is not within ±90°, `within` is below 0, or a number is not finite.
 */
export function leverUncertainty(reading: number, angle: number, within: number): number {
  refuseNonsense(reading, angle);
  if (!(within >= 0 && within < 90)) throw new RangeError('An angle is known within 0 to 90°');
  const limit = within * RADIANS;
  const across = (Math.sin(angle * RADIANS) * limit) / Math.sqrt(3);
  const along = (Math.cos(angle * RADIANS) * limit * limit) / Math.sqrt(20);
  return Math.abs(reading) * Math.hypot(across, along);
}

function refuseNonsense(reading: number, angle: number): void {
  if (!Number.isFinite(reading)) throw new RangeError('The reading is not finite');
  if (!(Math.abs(angle) < 90)) throw new RangeError('The lever stands within 90° of the face');
}
