import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { candidatesFor } from '../../../src/core/inspection/candidates';
import type { Candidate, Remedy } from '../../../src/core/inspection/candidates/candidate';
import { inspect } from '../../../src/core/inspection/inspect';
import { kindOf, type Requirement } from '../../../src/core/part/requirement';
import { equationsOf } from '../../../src/core/readings/equations-of';
import { DEFAULT_KIT } from '../../../src/core/readings/kit';
import type { Reading } from '../../../src/core/readings/reading';
import { zoneForms } from '../../../src/core/zones/requirement-forms';
import { PART, someReadings } from '../support/inspections';
import { isInRowSpace } from '../support/row-space';
import { BLOCK } from '../support/worked-block';

/** Whether `readings` fix all that the requirement asks about. */
function fixes(requirement: Requirement, readings: readonly Reading[]): boolean {
  const rows = equationsOf(readings, BLOCK, DEFAULT_KIT).map(({ form }) => form);
  return zoneForms(requirement, BLOCK).every((form) => isInRowSpace(form, rows));
}

/** All sets of `size` members. */
function sets<T>(items: readonly T[], size: number): readonly (readonly T[])[] {
  if (size === 0) return [[]];
  return items.flatMap((item, at) =>
    sets(items.slice(at + 1), size - 1).map((rest) => [item, ...rest]),
  );
}

const named = (all: readonly (readonly Remedy[])[]) => all.map((set) => JSON.stringify(set)).sort();

describe('what is advised where the readings do not fix a requirement', () => {
  const sizes = new Map<number, number>();

  it('is every smallest set of work that does, and nothing else', () => {
    fc.assert(
      fc.property(someReadings, fc.constantFrom(...PART.requirements), (readings, requirement) => {
        const part = { ...PART, requirements: [requirement] };
        const [finding] = inspect(part, readings, DEFAULT_KIT, 0.95).findings;
        // A word that faces are parallel is no proof of it.
        const counted =
          kindOf(requirement) === 'parallelism'
            ? readings.filter(({ kind }) => kind !== 'assumed parallel')
            : readings;
        expect(finding?.fixed).toBe(fixes(requirement, counted));
        if (finding === undefined || finding.fixed) return;
        const candidates = candidatesFor(requirement, counted, BLOCK);
        const enough = (set: readonly Candidate[]) =>
          fixes(requirement, [...counted, ...set.flatMap((one) => one.readings)]);
        const [size = 0] = [1, 2, 3].filter((count) => sets(candidates, count).some(enough));
        sizes.set(size, (sizes.get(size) ?? 0) + 1);
        const expected = size === 0 ? [] : sets(candidates, size).filter(enough);
        expect(named(finding.remedies)).toEqual(
          named(expected.map((set) => set.map(({ remedy }) => remedy))),
        );
      }),
      { numRuns: 120, seed: 8 },
    );
    for (const size of [1, 2, 3]) expect(sizes.get(size), `sets of ${size}`).toBeGreaterThan(3);
  });
});
