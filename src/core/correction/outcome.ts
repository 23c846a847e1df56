import { type Block, depthBehind } from '../part/block';
import type { Face } from '../part/faces';
import { kindOf, type Requirement } from '../part/requirement';
import type { Zone } from '../zones/zone';

/** What working a face has really done, from the readings before and after. */
export interface Outcome {
  /** µm taken off at the edge or corner that was high, less what came off opposite. Negative: it went the wrong way. */
  readonly wedge: number;
  /** Standard uncertainty, µm; the readings before and after are independent. */
  readonly standard: number;
}

/**
 * The wedge that came off `worked`, from the zones of `requirement` before and after, counted
 * towards the side that was high before.
 */
export function outcomeOf(
  requirement: Pick<Requirement, 'face' | 'datum'>,
  worked: Face,
  before: Zone,
  after: Zone,
  block: Block,
): Outcome {
  const { face, datum } = requirement;
  // A zone is an angle times the length of the requirement's face; the wedge is the same angle
  // times the length of the face that was worked.
  const other = worked === face ? datum : face;
  const leverage =
    kindOf(requirement) === 'squareness'
      ? depthBehind(block, other) / depthBehind(block, datum)
      : 1;
  const wedge = before.parts.reduce((total, part, index) => {
    const sign = part.value < 0 ? -1 : 1;
    return total + sign * (part.value - after.parts[index]!.value);
  }, 0);
  return {
    wedge: wedge * leverage,
    standard: Math.hypot(before.standard, after.standard) * leverage,
  };
}
