import type { KitLength, KitNumber } from '../entry/kit-entry';

/** Each figure of the kit, in short. */
export const KIT_NAMES: Readonly<Record<KitLength | KitNumber, string>> = {
  indicatorResolution: 'Indicator, smallest step read',
  indicatorError: 'Indicator, error at most ±',
  leverAngle: 'Lever to the face, angle (0: plunger)',
  leverWithin: 'Lever, angle known within ±',
  seating: 'Seating, standard deviation',
  plate: 'Plate under the block, at most ±',
  micrometerResolution: 'Micrometer, smallest step read',
  micrometerError: 'Micrometer, error at most ±',
  heightSetting: 'Heights and places as set, standard deviation',
  warmth: 'Opposite faces differ in temperature at most ±',
};

/** Units of the figures that are no lengths. */
export const KIT_NUMBER_UNITS: Readonly<Record<KitNumber, string>> = {
  leverAngle: '°',
  leverWithin: '°',
  warmth: 'K',
};
