import type { Estimate } from '../adjustment/adjustment';

/**
 * The width of a tolerance zone as the readings fix it, over the full face (ISO 1101). The zone is
 * |first| + |second| of its parts: one for squareness, two for parallelism. Value and doubt are in
 * µm; the doubt is that of the width at the signs that the parts have.
 */
export interface Zone extends Omit<Estimate, 'value'> {
  /** What each slope makes over the length of the face, with its sign. */
  readonly parts: readonly ZonePart[];
  /** Covariance of the two parts, µm²; 0 with one part. */
  readonly covariance: number;
  /** Σ|part|, never negative. */
  readonly width: number;
}

export type ZonePart = Pick<Estimate, 'value' | 'standard'>;
