import { type Adjustment, adjust } from '../adjustment/adjustment';
import type { Block } from '../part/block';
import type { LinearForm } from '../part/linear-form';
import { equationsOf } from '../readings/equations-of';
import type { Kit } from '../readings/kit';
import type { Reading } from '../readings/reading';
import type { Candidate, Remedy } from './candidates/candidate';

/** More pieces of work than this at once are a new inspection, not a remedy. */
const MOST_AT_ONCE = 3;

/**
 * The smallest sets of candidates that, added to the readings, fix all of `forms`: every set of
 * that smallest size. Empty where no set of up to three does.
 */
export function remediesFor(
  forms: readonly LinearForm[],
  readings: readonly Reading[],
  candidates: readonly Candidate[],
  block: Block,
  kit: Kit,
): readonly (readonly Remedy[])[] {
  for (let size = 1; size <= MOST_AT_ONCE; size += 1) {
    const enough = subsets(candidates, size).filter((chosen) => {
      const added = chosen.flatMap((candidate) => candidate.readings);
      return fixesAll(adjust(equationsOf([...readings, ...added], block, kit)), forms);
    });
    if (enough.length > 0) {
      return enough.map((chosen) => chosen.map((candidate) => candidate.remedy));
    }
  }
  return [];
}

function fixesAll(adjustment: Adjustment, forms: readonly LinearForm[]): boolean {
  return forms.every((form) => adjustment.estimate(form) !== undefined);
}

/** All subsets of `items` with `size` members, keeping their order. */
function subsets<T>(items: readonly T[], size: number): readonly (readonly T[])[] {
  if (size === 0) return [[]];
  return items.flatMap((item, index) =>
    subsets(items.slice(index + 1), size - 1).map((rest) => [item, ...rest]),
  );
}
