/** Where a shop draws the lines between the ways of working. */
export interface MethodSettings {
  /** The greatest wedge that is lapped by hand, µm. */
  readonly mostLapped: number;
  /** The deepest that is ground off, µm. */
  readonly mostGround: number;
  /** The largest face that is lapped by hand, mm². */
  readonly largestLapped: number;
}

/**
 * Common practice, no source: a hand laps a wedge of 20 µm in a minute or two and tires of more; a
 * surface grinder takes 10 µm at a pass, and half a millimetre is the work of a mill; a face of
 * 100 mm × 100 mm is about what a hand can press evenly.
 */
export const DEFAULT_METHOD_SETTINGS: MethodSettings = {
  mostLapped: 20,
  mostGround: 500,
  largestLapped: 10_000,
};

/** @throws RangeError where a limit is not above 0. */
export function refuseNoSettings(settings: MethodSettings): void {
  const { mostLapped, mostGround, largestLapped } = settings;
  if (![mostLapped, mostGround, largestLapped].every((limit) => limit > 0)) {
    throw new RangeError('A limit is above 0');
  }
}
