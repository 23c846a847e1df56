import type { Block } from './block';
import type { Face } from './faces';
import type { Requirement } from './requirement';

/** What the measuring model has to know of a part. */
export interface Part {
  readonly block: Block;
  /** The face that the part stands on as datum A. */
  readonly datum: Face;
  readonly requirements: readonly Requirement[];
  /** Faces that are finished and must not be worked. */
  readonly finished: readonly Face[];
}
