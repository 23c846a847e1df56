import { describe, expect, it } from 'vitest';
import type { MeasuredRequirement } from '../../../src/core/correction/plan/plan';
import { depthBehind } from '../../../src/core/part/block';
import {
  AXES,
  type Axis,
  axesInFace,
  FACES,
  faceTowards,
  oppositeFace,
} from '../../../src/core/part/faces';
import { kindOf, type Requirement } from '../../../src/core/part/requirement';
import { cornerProgram, valuesByHighs } from '../correction/plan/support/corner-program';
import { type Problem, plansOf, sizeOf } from '../correction/plan/support/problems';
import { wholeBetween } from '../linear-program/support/programs';
import {
  cornerBetween,
  type ExactBlock,
  exactOutOfSquare,
  NORMALS,
  randomBlock,
  thickness,
} from '../support/exact-block';
import { dot, plus, times } from '../support/exact-vectors';
import { known } from '../support/known';
import { manyRandoms, type Random } from '../support/random';
import { BLOCK, partWith, requirement } from '../support/worked-block';
import { doubleZone, simpleZone } from '../support/zones';
import { cut } from './support/cut';

/*
 * Exact skewed blocks with the widths and sizes that they truly have. The plan that comes out is cut
 * off their planes, and they are measured again. What was planned may be wrong by the second order
 * of the slopes only.
 */
const SLOPE = 0.1;
const BLOCKS = 1000;

/** Thickness over `axis` less the nominal one at a corner of the drawing, µm. */
function departureAt(block: ExactBlock, axis: Axis, point: Readonly<Record<Axis, number>>): number {
  const face = faceTowards(axis, 1);
  const middle = { ...point, [axis]: 0 };
  const shown = thickness(block, face, oppositeFace(face), [middle.x, middle.y, middle.z]);
  return (shown - block.size[axis]) * 1000;
}

/** Parts of the zone of a requirement over the full face, µm, by exact geometry. */
function exactParts(block: ExactBlock, { face, datum }: Requirement): readonly number[] {
  if (kindOf({ face, datum }) === 'squareness') {
    return [exactOutOfSquare(block, face, datum) * depthBehind(block, datum)];
  }
  return axesInFace(face).map((axis) => {
    const ends = [1, -1].map((sign) => {
      const at = { x: 0, y: 0, z: 0, [axis]: (sign * block.size[axis]) / 2 };
      return thickness(block, face, datum, [at.x, at.y, at.z]) * 1000;
    });
    return ends[0]! - ends[1]!;
  });
}

function measuredExactly(block: ExactBlock, one: Requirement): MeasuredRequirement {
  const [first, second] = exactParts(block, one);
  const zone = second === undefined ? simpleZone(first!, 0) : doubleZone([first!, second], [0, 0]);
  return { requirement: one, zone, formPoints: [] };
}

/** A block, and what is asked of it, all of it in proportion to `slope`. */
function problemWith(random: Random, slope: number) {
  const block = randomBlock(random, BLOCK.size, slope, 200 * slope);
  const pairs = FACES.flatMap((face) =>
    FACES.filter((datum) => datum !== face).map((datum) => [face, datum] as const),
  );
  const asked = Array.from({ length: wholeBetween(random, 1, 6) }, () => {
    const [face, datum] = pairs[wholeBetween(random, 0, pairs.length - 1)]!;
    return requirement(face, datum, random.between(20, 160) * slope);
  });
  const requirements = [...new Map(asked.map((one) => [one.id, one])).values()];
  const finished = FACES.filter(() => random.between(0, 1) < 0.25);
  const sizes = AXES.map((axis) => {
    const corners = sizeOf(BLOCK, axis, 0);
    return corners.map((one) => ({ ...one, departure: departureAt(block, axis, one.point) }));
  });
  // Some sizes leave room for any cut, some for hardly one.
  const limits = sizes.map((corners) => {
    const least = Math.min(...corners.map(({ departure }) => departure));
    return { lower: least - random.between(0, 60) * slope };
  });
  const byAxis = <T>(of: readonly T[]) => ({ x: of[0]!, y: of[1]!, z: of[2]! });
  const problem: Problem = {
    part: { ...partWith(requirements, finished), sizeLimits: byAxis(limits) },
    measured: requirements.map((one) => measuredExactly(block, one)),
    sizes: byAxis(sizes),
    demand: { level: 0.95, share: random.between(0.2, 1) },
  };
  return { block, problem };
}

function planned(random: Random, slope: number) {
  const { block, problem } = problemWith(random, slope);
  const { best } = plansOf(problem);
  return { block, problem, best, after: cut(block, best) };
}

type Planned = ReturnType<typeof planned>;

/** By how much the worst requirement misses its share, µm. */
function worstExcess(cases: readonly Planned[]): number {
  const excesses = cases.flatMap(({ problem, best, after }) =>
    best.possible
      ? problem.part.requirements.map((one) => {
          const width = exactParts(after, one).reduce((total, part) => total + Math.abs(part), 0);
          return width - problem.demand.share * one.tolerance;
        })
      : [],
  );
  return Math.max(...excesses);
}

/** By how much the worst size is below its limit, µm. */
function worstShortfall(cases: readonly Planned[]): number {
  const shortfalls = cases.flatMap(({ problem, best, after }) =>
    best.possible
      ? AXES.flatMap((axis) => {
          const lower = known(problem.part.sizeLimits?.[axis]?.lower);
          return known(problem.sizes[axis]).map(
            ({ point }) => lower - departureAt(after, axis, point),
          );
        })
      : [],
  );
  return Math.max(...shortfalls);
}

/** The greatest error in what was foretold of a part or of a size, possible or not, µm. */
function worstForetold(cases: readonly Planned[]): number {
  const errors = cases.flatMap(({ problem, best, after }) => [
    ...best.effects.flatMap((effect, index) => {
      const parts = exactParts(after, problem.part.requirements[index]!);
      return effect.after.parts.map(({ value }, k) => Math.abs(value - parts[k]!));
    }),
    ...best.sizes.flatMap(({ axis, corners }) =>
      corners.map((one) => Math.abs(known(one.after) - departureAt(after, axis, one.point))),
    ),
  ]);
  return Math.max(...errors);
}

/** The greatest error in what comes off at a corner, along the normal of its face, µm. */
function worstAtCorners(cases: readonly Planned[]): number {
  const errors = cases.flatMap(({ block, best, after }) =>
    best.steps.flatMap(({ face, corners }) =>
      corners.map(({ towards, removal }) => {
        const [before, now] = [block, after].map((one) => cornerBetween(one, face, towards));
        const grown = dot(plus(now!, times(before!, -1)), NORMALS[face]) * 1000;
        return Math.abs(grown + removal);
      }),
    ),
  );
  return Math.max(...errors);
}

describe('the plan for an exact block', { timeout: 120_000 }, () => {
  const cases = manyRandoms(BLOCKS).map((random) => planned(random, SLOPE));
  const casesOfTenth = manyRandoms(BLOCKS).map((random) => planned(random, SLOPE / 10));

  it.each([
    ['brings every requirement to its share', worstExcess],
    ['keeps every size above its limit', worstShortfall],
    ['foretells widths and sizes', worstForetold],
    ['takes off at the corners what it says', worstAtCorners],
  ])('%s but for the second order: within s²/2 µm over these 90 mm', (_, worst) => {
    // Twice the bound of exact-angles.test.ts is 90·2·s²/1000; several faces are cut, and slope more.
    expect(worst(cases)).toBeLessThan(SLOPE ** 2 / 2);
    // There is an error, and it is not of first order.
    expect(worst(cases) / worst(casesOfTenth)).toBeGreaterThan(90);
    expect(worst(cases) / worst(casesOfTenth)).toBeLessThan(110);
  });

  it('adds to no corner', () => {
    for (const { best } of cases) {
      for (const { corners } of best.steps) {
        for (const { removal } of corners) expect(removal).toBeGreaterThanOrEqual(0);
      }
    }
  });

  it('is there or is not, as HiGHS says of the same block', () => {
    let stopped = 0;
    for (const { problem, best } of cases) {
      const volume = valuesByHighs(cornerProgram(problem, best.faces, false));
      expect(best.possible).toBe(volume !== undefined);
      if (!best.possible) stopped += 1;
    }
    expect(stopped).toBeGreaterThan(BLOCKS / 20);
    expect(stopped).toBeLessThan(BLOCKS / 2);
  });

  it('is often held by a size, and often wants more than one face', () => {
    const held = cases.filter(({ best }) =>
      best.sizes.some(({ limits, corners }) =>
        corners.some(({ after, comesOff }) => comesOff > 0 && after! - limits.lower! < 1e-9),
      ),
    );
    expect(held.length).toBeGreaterThan(BLOCKS / 20);
    expect(cases.filter(({ best }) => best.steps.length > 1).length).toBeGreaterThan(BLOCKS / 10);
  });
});
