import type { Block } from '../part/block';
import { areOpposite } from '../part/faces';
import type { Requirement } from '../part/requirement';
import type { Reading } from '../readings/reading';
import { assumption } from './candidates/assumption';
import type { Candidate } from './candidates/candidate';
import { traverseAgain, traverses } from './candidates/column';
import { fourSides } from './candidates/four-sides';
import { microHeights, microPlaces } from './candidates/micrometer';
import { bothSides, seatAgain, swings } from './candidates/nose-comparator';

type Pair = Pick<Requirement, 'face' | 'datum'>;

/** What a toolmaker could still do for `requirement`, the least work first. */
export function candidatesFor(
  requirement: Pair,
  readings: readonly Reading[],
  block: Block,
): readonly Candidate[] {
  return waysTo(requirement, readings, block, { word: [assumption(requirement.face)] });
}

/** Readings that could still be added where a requirement is fixed already, to narrow its doubt. */
export function furtherReadings(
  requirement: Pair,
  readings: readonly Reading[],
  block: Block,
): readonly Candidate[] {
  const { face } = requirement;
  const again = [...seatAgain(face, readings), ...traverseAgain(face, readings)];
  return waysTo(requirement, readings, block, { again });
}

/** What can be read for `requirement` by every instrument; for a squareness also `again` and `word`. */
function waysTo(
  { face, datum }: Pair,
  readings: readonly Reading[],
  block: Block,
  { again = [], word = [] }: Partial<Record<'again' | 'word', readonly Candidate[]>>,
): readonly Candidate[] {
  if (areOpposite(face, datum)) return microPlaces(face, block);
  return [
    ...again,
    ...swings(face, datum, readings),
    ...traverses(face, datum, readings),
    microHeights(face, datum, block),
    ...word,
    ...fourSides(face, datum, readings, block),
    // Whoever has a column at work runs it up once more, rather than fetch a comparator.
    ...(again.some(({ remedy }) => remedy.kind === 'seat again and traverse')
      ? []
      : [bothSides(face, datum, block)]),
  ];
}
