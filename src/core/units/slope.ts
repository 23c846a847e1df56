/**
 * A slope in µm/mm is the tangent of its angle in mrad. These give the same slope as the trade
 * states it; the sign is kept.
 */

const ARC_SECONDS_PER_RADIAN = (180 * 3600) / Math.PI;

/** µm over 100 mm, from a slope in µm/mm. */
export function per100Millimetres(slope: number): number {
  return slope * 100;
}

/** µm over one inch (25.4 mm), from a slope in µm/mm. */
export function perInch(slope: number): number {
  return slope * 25.4;
}

/** The angle in arc seconds of a slope in µm/mm. */
export function arcSeconds(slope: number): number {
  return Math.atan(slope / 1000) * ARC_SECONDS_PER_RADIAN;
}
