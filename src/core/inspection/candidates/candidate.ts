import type { Face } from '../../part/faces';
import type { Reading } from '../../readings/reading';

/** A further piece of measuring that could fix what the readings do not. */
export type Remedy =
  | { readonly kind: 'swing to the other side'; readonly setting: string; readonly face: Face }
  | { readonly kind: 'traverse the other side'; readonly column: string; readonly face: Face }
  | {
      readonly kind: 'compare both sides';
      readonly faces: readonly [Face, Face];
      readonly base: Face;
    }
  | { readonly kind: 'micrometer at two heights'; readonly face: Face; readonly base: Face }
  | {
      readonly kind: 'micrometer at a corner';
      readonly face: Face;
      readonly towards: readonly [Face, Face];
    }
  | {
      readonly kind: 'turn on all four sides';
      /** The setting of a comparator, or the column, that has read the section already. */
      readonly setting?: string;
      readonly column?: string;
      readonly faces: FourFaces;
    }
  | { readonly kind: 'seat again and read'; readonly setting: string; readonly face: Face }
  | {
      readonly kind: 'seat again and traverse';
      readonly column: string;
      readonly faces: readonly Face[];
      readonly base: Face;
    }
  | { readonly kind: 'assume parallel'; readonly face: Face };

/** The four faces round a section, in the order in which the block is turned on them. */
export type FourFaces = readonly [Face, Face, Face, Face];

/** A remedy with the readings that it would bring; their values do not matter to what they fix. */
export interface Candidate {
  readonly remedy: Remedy;
  readonly readings: readonly Reading[];
}

/** What the ids of readings begin with that nobody has taken. */
export const REMEDY_ID = 'remedy';
