import { expect } from 'vitest';
import type { Contact, MinimumZone } from '../../../../../src/core/zones/form/minimum-zone-fit';
import { expectClose } from '../../../support/close';

export interface AnyPoint {
  readonly u: number;
  readonly v?: number;
  readonly deviation: number;
}

/** Parts of the range of a number that rounding may come to. */
const ROUNDING = 1e-11;

/**
 * Proves that `zone` is the least one of `points`, by nothing but sums over them: it holds every
 * point, and the shares of the contacts show that no zone is less wide (Kirchberger, Mathematische
 * Annalen 57, 1903; the alternation of Chebyshev on a line).
 *
 * @param rounding part of each range by which sums may differ.
 */
export function verifyCertificate(
  points: readonly AnyPoint[],
  zone: MinimumZone,
  rounding = ROUNDING,
): void {
  const { upper, lower, width, residuals } = zone;
  const height = (point: AnyPoint) => point.deviation - points[0]!.deviation;
  const within = (of: (point: AnyPoint) => number) => ({
    absolute: rounding * rangeOf(points, of),
  });

  for (const side of [upper, lower]) {
    expect(side.length).toBeGreaterThan(0);
    expect(Math.min(...side.map(({ share }) => share))).toBeGreaterThan(0);
    expectClose(
      side.reduce((sum, { share }) => sum + share, 0),
      1,
    );
  }
  for (const way of ['u', 'v'] as const) {
    const place = (point: AnyPoint) => (point[way] ?? 0) - (points[0]![way] ?? 0);
    expectClose(weighted(points, upper, place), weighted(points, lower, place), within(place));
  }
  const apart = weighted(points, upper, height) - weighted(points, lower, height);
  expectClose(apart, width, within(height));

  const [least, greatest] = [Math.min(...residuals), Math.max(...residuals)];
  expectClose(greatest - least, width, within(height));
  for (const { index } of upper) expectClose(residuals[index], greatest, within(height));
  for (const { index } of lower) expectClose(residuals[index], least, within(height));
  // Steep planes over nearly one line magnify the rounding of the mean place.
  expectResiduals(points, zone, 100 * rounding);
}

/** The residuals are those from the plane, and the plane lies in the middle of the zone. */
function expectResiduals(
  points: readonly AnyPoint[],
  { plane, residuals }: MinimumZone,
  rounding: number,
): void {
  const { u, v } = plane.slopes;
  const rise =
    Math.abs(u) * rangeOf(points, (one) => one.u) + Math.abs(v) * rangeOf(points, across);
  const allowance = { absolute: rounding * (sizeOf(points) + rise) };
  points.forEach((point, i) => {
    const height =
      plane.height + u * (point.u - plane.middle.u) + v * (across(point) - plane.middle.v);
    expectClose(residuals[i], point.deviation - height, allowance);
  });
  expectClose(Math.max(...residuals) + Math.min(...residuals), 0, allowance);
}

function across({ v = 0 }: AnyPoint): number {
  return v;
}

function weighted(
  points: readonly AnyPoint[],
  contacts: readonly Contact[],
  of: (point: AnyPoint) => number,
): number {
  return contacts.reduce((sum, { index, share }) => sum + share * of(points[index]!), 0);
}

function rangeOf(points: readonly AnyPoint[], of: (point: AnyPoint) => number): number {
  const numbers = points.map(of);
  return Math.max(...numbers) - Math.min(...numbers);
}

function sizeOf(points: readonly AnyPoint[]): number {
  return Math.max(...points.map(({ deviation }) => Math.abs(deviation)));
}
