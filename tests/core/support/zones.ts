import type { Zone, ZonePart } from '../../../src/core/zones/zone';

/** A zone of one part, as of squareness. */
export function simpleZone(value: number, standard: number): Zone {
  return zoneOf([{ value, standard }], 0);
}

/** A zone of two parts, as of parallelism, with the correlation between them. */
export function doubleZone(
  values: readonly [number, number],
  standards: readonly [number, number],
  correlation = 0,
): Zone {
  const parts = values.map((value, index) => ({ value, standard: standards[index]! }));
  return zoneOf(parts, correlation * standards[0] * standards[1]);
}

function zoneOf(parts: readonly ZonePart[], covariance: number): Zone {
  const signs = parts.reduce((product, { value }) => product * (value < 0 ? -1 : 1), 1);
  const squares = parts.reduce((total, { standard }) => total + standard ** 2, 0);
  return {
    parts,
    covariance,
    width: parts.reduce((width, { value }) => width + Math.abs(value), 0),
    standard: Math.sqrt(Math.max(0, squares + 2 * signs * covariance)),
    degreesOfFreedom: Number.POSITIVE_INFINITY,
    contributions: [],
    terms: [],
    restsOn: new Set(),
  };
}
