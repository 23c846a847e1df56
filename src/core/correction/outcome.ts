import { type Block, depthBehind } from '../part/block';
import type { Face } from '../part/faces';
import { kindOf, type Requirement } from '../part/requirement';
import { combineDoubt, type DoubtComponent } from '../statistics/effective-degrees';
import type { Zone } from '../zones/zone';

/** What working a face has really done, from the readings before and after. */
export interface Outcome extends DoubtComponent {
  /** µm taken off at the edge or corner that was high, less what came off opposite. Negative: it went the wrong way. */
  readonly wedge: number;
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
  const signs = before.parts.map(({ value }) => (value < 0 ? -1 : 1));
  const wedge = before.parts.reduce(
    (total, part, index) => total + signs[index]! * (part.value - after.parts[index]!.value),
    0,
  );
  // The readings before and after are independent.
  const doubts = [before, after].map((zone) => ({
    standard: standardAlong(zone, signs) * leverage,
    degreesOfFreedom: zone.degreesOfFreedom,
  }));
  return { wedge: wedge * leverage, ...combineDoubt(doubts) };
}

/** Standard uncertainty of the parts of a zone added up with `signs`, µm (GUM 5.2.2). */
function standardAlong({ parts, covariance }: Zone, signs: readonly number[]): number {
  const squares = parts.reduce((total, { standard }) => total + standard ** 2, 0);
  const mixed = parts.length > 1 ? 2 * signs[0]! * signs[1]! * covariance : 0;
  return Math.sqrt(Math.max(0, squares + mixed));
}
