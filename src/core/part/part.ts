import type { Block } from './block';
import type { Axis, Face } from './faces';
import type { FlatnessRequirement, Requirement } from './requirement';

/** What the measuring model has to know of a part. */
export interface Part {
  readonly block: Block;
  /** The face that the part stands on as datum A. */
  readonly datum: Face;
  readonly requirements: readonly Requirement[];
  /** Faces that are to be flat by themselves; left out where none is. */
  readonly flatness?: readonly FlatnessRequirement[];
  /** Faces that are finished and must not be worked. */
  readonly finished: readonly Face[];
  /** The finest roughness Ra, µm, that the drawing asks of the faces; undefined where it asks for none. */
  readonly roughness?: number;
  /** What the drawing allows of each size; an axis that is left out is not limited. */
  readonly sizeLimits?: Readonly<Partial<Record<Axis, SizeLimits>>>;
}

/** Limits of a size as departures from the nominal one, in µm: -10 and 0 for 60 −0.010/0. */
export interface SizeLimits {
  readonly lower?: number;
  readonly upper?: number;
}
