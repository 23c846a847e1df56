import type { Limits } from './read-length';

/** What an indicator can show, µm. */
export const READING: Limits = {
  least: -5000,
  most: 5000,
  tooSmall: 'Beyond 5 mm: no indicator of this kind travels so far. Check the unit',
  tooLarge: 'Beyond 5 mm: no indicator of this kind travels so far. Check the unit',
};

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
    tooLarge: `Above the part, which is ${trim(tall)} mm high there`,
  };
}

/** A distance from an edge of a face `long` mm, in µm. */
export function placeLimits(long: number): Limits {
  return {
    least: 0,
    most: long * 1000 * ROUNDING,
    tooSmall: 'Off the face: distances count inward from the edge',
    tooLarge: `Off the face, which is ${trim(long)} mm long there`,
  };
}

/** A thickness that should be `nominal` mm, in µm: more than 5 % off is a slip or another part. */
export function thicknessLimits(nominal: number): Limits {
  const message = `Far from the ${trim(nominal)} mm of the drawing. Check the figure and the unit`;
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
  tooLarge: 'Over 1 mm: that is no longer parallel. Check the unit',
};

function trim(millimetres: number): string {
  return String(Number(millimetres.toFixed(3)));
}
