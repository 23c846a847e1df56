import { describe, expect, it } from 'vitest';
import { adjust } from '../../../src/core/adjustment/adjustment';
import type { MeasuredRequirement, Plan } from '../../../src/core/correction/plan/plan';
import { plansFor } from '../../../src/core/correction/plan/plans-for';
import { type Sizes, sizesOf } from '../../../src/core/correction/plan/sizes';
import { AXES, FACE_PAIRS } from '../../../src/core/part/faces';
import type { Requirement } from '../../../src/core/part/requirement';
import { equationsOf } from '../../../src/core/readings/equations-of';
import { DEFAULT_KIT } from '../../../src/core/readings/kit';
import { zoneOfRequirement } from '../../../src/core/zones/zone-of-requirement';
import { wholeBetween } from '../linear-program/support/programs';
import { type ExactBlock, randomBlock } from '../support/exact-block';
import { exactSwing, exactThickness, PAIRS_ON_BASES } from '../support/exact-inspection';
import { known } from '../support/known';
import { manyRandoms, type Random } from '../support/random';
import { BLOCK, partWith, requirement } from '../support/worked-block';
import { cut } from './support/cut';

/*
 * The whole way: exact blocks are read, the plan that comes out of the readings is cut off their
 * faces, and they are stood up and read again. Readings without noise, but with the doubt of the usual kit.
 */
const SLOPE = 0.1;
const BLOCKS = 60;

/** Twice the bound of exact-angles.test.ts over 90 mm, for what is read before and after, and as much for the cut. */
const SECOND_ORDER = (4 * 90 * SLOPE ** 2) / 1000;

interface Found {
  readonly measured: readonly MeasuredRequirement[];
  readonly sizes: Sizes;
}

function read(block: ExactBlock, requirements: readonly Requirement[], random: Random): Found {
  const readings = [
    ...PAIRS_ON_BASES.flatMap(([face, base]) => exactSwing(block, face, base, SLOPE, random)),
    ...FACE_PAIRS.flatMap(([face]) => exactThickness(block, face)),
  ];
  const adjustment = adjust(equationsOf(readings, BLOCK, DEFAULT_KIT));
  const measured = requirements.map((one) => ({
    requirement: one,
    zone: known(zoneOfRequirement(one, BLOCK, adjustment)),
    formPoints: [],
  }));
  return { measured, sizes: sizesOf({ block: BLOCK }, adjustment) };
}

function corrected(random: Random) {
  const block = randomBlock(random, BLOCK.size, SLOPE);
  const pairs = [...PAIRS_ON_BASES, ...FACE_PAIRS];
  const asked = [0, 1, 2].map(() => {
    const [face, datum] = pairs[wholeBetween(random, 0, pairs.length - 1)]!;
    return requirement(face, datum, random.between(6, 16));
  });
  const requirements = [...new Map(asked.map((one) => [one.id, one])).values()];
  const before = read(block, requirements, random);
  const demand = { level: 0.95, share: 0.5 };
  const plans = plansFor(partWith(requirements), before.measured, before.sizes, demand);
  const cases = [plans.best, ...plans.single].filter(({ steps }) => steps.length > 0);
  return cases.map((plan) => ({ plan, found: read(cut(block, plan), requirements, random) }));
}

describe('the correction of an exact block', { timeout: 60_000 }, () => {
  const cases = manyRandoms(BLOCKS).flatMap(corrected);

  function worst(errorsOf: (plan: Plan, found: Found) => readonly number[]): number {
    return Math.max(...cases.flatMap(({ plan, found }) => errorsOf(plan, found)));
  }

  it('is planned for most of them, and stopped for some', () => {
    const possible = cases.filter(({ plan }) => plan.possible).length;
    expect(possible).toBeGreaterThan(BLOCKS);
    expect(cases.length - possible).toBeGreaterThan(BLOCKS);
  });

  it('brings every requirement, as it is read then, to its share with its guard', () => {
    const excess = worst(({ possible, effects }, { measured }) =>
      possible
        ? measured.map(({ zone }, index) => {
            const { allowed, guard } = effects[index]!;
            return zone.width + guard - allowed;
          })
        : [],
    );
    expect(excess).toBeLessThan(SECOND_ORDER);
    expect(excess).toBeGreaterThan(-SECOND_ORDER);
  });

  it('does to every requirement and size what it foretells, stopped or not', () => {
    const error = worst(({ effects, sizes }, found) => [
      ...effects.flatMap(({ after }, index) =>
        after.parts.map(({ value }, k) => {
          return Math.abs(value - found.measured[index]!.zone.parts[k]!.value);
        }),
      ),
      ...AXES.flatMap((axis, index) =>
        sizes[index]!.corners.map(({ after }, corner) => {
          return Math.abs(known(after) - known(found.sizes[axis])[corner]!.departure);
        }),
      ),
    ]);
    expect(error).toBeLessThan(SECOND_ORDER);
  });
});
