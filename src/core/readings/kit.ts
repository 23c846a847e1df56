/** What is known of the instruments and the plate. Lengths of errors in µm, of heights in mm. */
export interface Kit {
  /** The least step that the indicator shows or is read to. */
  readonly indicatorResolution: number;
  /** The most that the indicator is off over the travel in use, either way. */
  readonly indicatorError: number;
  /** How far the edge of the block lifts from one seating to the next: a standard deviation. */
  readonly seating: number;
  /** The most that the plate rises or falls under the block, either way. */
  readonly plate: number;
  /** The least step that the micrometer is read to. */
  readonly micrometerResolution: number;
  /** The most that the micrometer is off between two places of one part, either way. */
  readonly micrometerError: number;
  /** How well a height or a place is set: a standard deviation, in mm. */
  readonly heightSetting: number;
}

/** A clean shop with ordinary good kit. Common practice, no source. */
export const DEFAULT_KIT: Kit = {
  indicatorResolution: 1,
  indicatorError: 0.5,
  seating: 0.3,
  plate: 0.5,
  micrometerResolution: 1,
  micrometerError: 0.5,
  heightSetting: 0.3,
};
