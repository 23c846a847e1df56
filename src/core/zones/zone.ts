/**
 * The width of a tolerance zone as the readings fix it, over the full face (ISO 1101). The zone is
 * |first| + |second| of its parts: one for squareness, two for parallelism.
 */
export interface Zone {
  /** What each slope makes over the length of the face, µm, with its sign. */
  readonly parts: readonly ZonePart[];
  /** Covariance of the two parts, µm²; 0 with one part. */
  readonly covariance: number;
  /** Σ|part|, µm, never negative. */
  readonly width: number;
  /** Standard uncertainty of the width, µm, at the signs that the parts have. */
  readonly standard: number;
  readonly restsOn: ReadonlySet<string>;
}

export interface ZonePart {
  readonly value: number;
  readonly standard: number;
}

/** The zone of its parts. */
export function zoneOf(
  parts: readonly ZonePart[],
  covariance: number,
  restsOn: ReadonlySet<string>,
): Zone {
  const [first, second] = parts as readonly [ZonePart, ZonePart?];
  const signs = Math.sign(first.value || 1) * Math.sign(second?.value || 1);
  const variance = first.standard ** 2 + (second?.standard ?? 0) ** 2 + 2 * signs * covariance;
  return {
    parts,
    covariance,
    width: parts.reduce((width, part) => width + Math.abs(part.value), 0),
    standard: Math.sqrt(Math.max(0, variance)),
    restsOn,
  };
}
