import type { RequirementKind } from '../core/part/requirement';

/**
 * Symbols of ISO 1101 (geometrical characteristics) as lines in a square of 28 by 24: few fonts have
 * them as signs, and to look for one that does takes a slow phone longer than a frame.
 */
export const SYMBOLS: Readonly<Record<RequirementKind, string>> = {
  squareness: 'M14 5V19M6 19H22',
  parallelism: 'M7 19L13 5M15 19L21 5',
  flatness: 'M5 18L11 6H23L17 18Z',
};
