import { fromMillimetres } from '../core/units/length';
import type { Limits, Refusal } from './read-length';
import { lengthText } from './typed-length';

/** What an indicator can show, µm. */
export const READING: Limits = {
  least: -5000,
  most: 5000,
  tooSmall: tooFar,
  tooLarge: tooFar,
  // What was read in inches and typed as tenths, '0.0004', would pass for nothing.
  doubted: {
    than: 0.03,
    why: (unit) => `Less than a dial shows. Is it in ${unit}? Then type “${unit}” after it`,
  },
};

function tooFar(unit: 'mm' | 'in'): string {
  return `Beyond ${limitSaid(5, unit)}: no indicator of this kind travels so far. Check the unit`;
}

/** Slopes above this, in µm/mm, are no longer small: half a degree and more is seen by eye. */
export const STEEPEST = 10;

export const TOO_STEEP =
  'That is over half a degree out of square. Check this reading, its unit and the heights';

/** A size and a height typed in different units meet only to rounding: as a share, far below a nanometre. */
const ROUNDING = 1 + 1e-9;

/** A height on a part `tall` mm high, in µm. */
export function heightLimits(tall: number): Limits {
  return {
    least: 0,
    most: tall * 1000 * ROUNDING,
    tooSmall: 'Below the plate: heights count up from it',
    tooLarge: (unit) => `Above the part, which is ${limitSaid(tall, unit)} high there`,
  };
}

/** A distance from an edge of a face `long` mm, in µm. */
export function placeLimits(long: number): Limits {
  return {
    least: 0,
    most: long * 1000 * ROUNDING,
    tooSmall: 'Off the face: distances count inward from the edge',
    tooLarge: (unit) => `Off the face, which is ${limitSaid(long, unit)} long there`,
  };
}

/** A thickness that should be `nominal` mm, in µm: more than 5 % off is a slip or another part. */
export function thicknessLimits(nominal: number): Limits {
  const message: Refusal = (unit) =>
    `Far from the ${limitSaid(nominal, unit)} of the drawing. Check the figure and the unit`;
  return {
    least: nominal * 950,
    most: nominal * 1050,
    tooSmall: message,
    tooLarge: message,
  };
}

/** How parallel two faces may be said to be, µm. */
export const WITHIN: Limits = {
  least: 0.01,
  most: 1000,
  tooSmall: 'Above 0: nothing is parallel to the last atom',
  tooLarge: (unit) => `Over ${limitSaid(1, unit)}: that is no longer parallel. Check the unit`,
};

/** A length as a limit is told: '63.5 mm', '2.5 in'. */
export function limitSaid(millimetres: number, unit: 'mm' | 'in'): string {
  return `${lengthText(fromMillimetres(millimetres, unit), unit === 'in' ? 4 : 3)} ${unit}`;
}
