import type { Block } from '../../part/block';
import type { Face } from '../../part/faces';
import { highSide, type Removal, wedgeOf } from '../removal';

/** How deep to cut a face that is set as it should be, from where the tool first touches it, µm. */
export interface CutDepths {
  /** Where the tool touches first: one neighbour names an edge, two a corner, none all of the face. */
  readonly touches: readonly Face[];
  /** From the first touch to the finished face: what comes off where most does. */
  readonly full: number;
  /** What comes off where least does. */
  readonly least: number;
  /** From the first touch to where the tool cuts all over: short of it the face does not clean up. */
  readonly cleansUp: number;
}

/** A feathered corner may be a hair below 0. */
const ROUNDING = 1e-9;

/**
 * The depths of the cut that takes `removal` off.
 *
 * @throws RangeError where nothing is to come off, or less than nothing somewhere.
 */
export function cutDepths(block: Block, removal: Removal): CutDepths {
  const full = wedgeOf(block, removal);
  if (!(full > 0)) throw new RangeError('Nothing is to come off');
  const opposite = 2 * removal.mean - full;
  if (opposite < -ROUNDING * full) throw new RangeError('A cut adds nothing');
  const least = Math.max(0, opposite);
  return { touches: highSide(removal), full, least, cleansUp: full - least };
}
