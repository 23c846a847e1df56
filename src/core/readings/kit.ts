import { degreesOfJudgement } from '../statistics/effective-degrees';

/** What is known of the instruments and the plate. Lengths of errors in µm, of heights in mm. */
export interface Kit {
  /** The least step that the indicator shows or is read to. */
  readonly indicatorResolution: number;
  /** The most that the indicator is off over the travel in use, either way. */
  readonly indicatorError: number;
  /** Angle between a lever-type indicator's lever and the face, in degrees; 0 for a plunger. */
  readonly leverAngle: number;
  /** How well that angle is known, either way, in degrees. */
  readonly leverWithin: number;
  /** How far the edge of the block lifts from one seating to the next: a standard deviation. */
  readonly seating: number;
  /** Degrees of freedom that the seating is known with. */
  readonly seatingDegrees: number;
  /** The most that the plate rises or falls under the block, either way. */
  readonly plate: number;
  /** Flatness of the whole plate, µm, and its diagonal, mm: where given, it stands for `plate`. */
  readonly plateOverall?: { readonly flatness: number; readonly diagonal: number };
  /** The least step that the micrometer is read to. */
  readonly micrometerResolution: number;
  /** The most that the micrometer is off between two places of one part, either way. */
  readonly micrometerError: number;
  /** How well a height or a place is set: a standard deviation, in mm. */
  readonly heightSetting: number;
  /** The most that opposite faces of the part differ in temperature, either way, in K. */
  readonly warmth: number;
}

/** What is known of one indicator or micrometer: as much of it as is given stands in place of the kit's. */
export type InstrumentFigures = Partial<
  Pick<
    Kit,
    | 'indicatorResolution'
    | 'indicatorError'
    | 'leverAngle'
    | 'leverWithin'
    | 'micrometerResolution'
    | 'micrometerError'
  >
>;

/** The kit as it holds for a reading: with what is known of the instrument that it was read with. */
export function kitFor(reading: { readonly instrument?: InstrumentFigures }, kit: Kit): Kit {
  return reading.instrument === undefined ? kit : { ...kit, ...reading.instrument };
}

/** A judged spread that may itself be off by a quarter (GUM G.4.2). */
const JUDGED = degreesOfJudgement(0.25);

/** A clean shop with ordinary good kit. Common practice, no source. */
export const DEFAULT_KIT: Kit = {
  indicatorResolution: 1,
  indicatorError: 0.5,
  leverAngle: 0,
  leverWithin: 0,
  seating: 0.3,
  seatingDegrees: JUDGED,
  plate: 0.5,
  micrometerResolution: 1,
  micrometerError: 0.5,
  heightSetting: 0.3,
  warmth: 0.1,
};
