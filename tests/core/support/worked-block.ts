import type { Block, Triple } from '../../../src/core/part/block';
import type { Face } from '../../../src/core/part/faces';
import type { Part } from '../../../src/core/part/part';
import type { Requirement } from '../../../src/core/part/requirement';

/** The block of the worked cases, mm. */
export const BLOCK: Block = { size: { x: 60, y: 40, z: 90 } };

export const CENTRE: Triple = { x: 0, y: 0, z: 0 };

/** A line of the drawing: `face` to `datum`, within `tolerance` µm. */
export function requirement(face: Face, datum: Face, tolerance = 10): Requirement {
  return { id: `${face} to ${datum}`, face, datum, tolerance };
}

/** A part on its bottom with these requirements. */
export function partWith(
  requirements: readonly Requirement[],
  finished: readonly Face[] = [],
  block = BLOCK,
): Part {
  return { block, datum: 'bottom', requirements, finished };
}
