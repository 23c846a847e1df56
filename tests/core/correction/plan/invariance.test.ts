import { describe, expect, it } from 'vitest';
import { adjust } from '../../../../src/core/adjustment/adjustment';
import { plansFor } from '../../../../src/core/correction/plan/plans-for';
import { sizesOf } from '../../../../src/core/correction/plan/sizes';
import { findingsOf } from '../../../../src/core/inspection/findings';
import { AXES, type Axis, FACE_PAIRS } from '../../../../src/core/part/faces';
import type { Part, SizeLimits } from '../../../../src/core/part/part';
import { equationsOf } from '../../../../src/core/readings/equations-of';
import { DEFAULT_KIT } from '../../../../src/core/readings/kit';
import type { Reading } from '../../../../src/core/readings/reading';
import { expectClose } from '../../support/close';
import { known } from '../../support/known';
import { manyRandoms, type Random, randomFrom } from '../../support/random';
import { micrometer, nose } from '../../support/readings';
import {
  ROTATIONS,
  type Rotation,
  turned,
  turnedFace,
  turnedPart,
  turnedReading,
} from '../../support/rotations';
import { partWith, requirement } from '../../support/worked-block';
import { anyProblem, type Problem, plansOf } from './support/problems';

const NEAR = { absolute: 1e-7, relative: 1e-7 };

/** Sides read on the bottom, all three thicknesses read: everything is known. */
function someReadings(random: Random): readonly Reading[] {
  const value = () => Math.round(random.between(-8, 8));
  const sides = [
    nose('right', 32 + value()),
    nose('left', 32 + value()),
    nose('back', value(), { setting: 'other' }),
    nose('front', value(), { setting: 'other' }),
  ];
  const thicknesses = [
    ...[-15, 15, 0].map((y, n) => micrometer('right', { y, z: n < 2 ? -40 : 40 }, value())),
    ...[-25, 25, 0].map((x, n) => micrometer('back', { x, z: n < 2 ? -40 : 40 }, value())),
    ...[-25, 25, 0].map((x, n) => micrometer('top', { x, y: n < 2 ? -15 : 15 }, value())),
  ];
  return [...sides, ...thicknesses];
}

const PART: Part = {
  ...partWith(
    [
      requirement('right', 'bottom', 12),
      requirement('left', 'bottom', 14),
      requirement('back', 'bottom', 16),
      ...FACE_PAIRS.map(([face, opposite], index) => requirement(face, opposite, 15 + index)),
    ],
    ['front'],
  ),
  sizeLimits: { x: { lower: -18 }, y: { lower: -24, upper: 0 }, z: { lower: -20 } },
};

/** The part, and with every other seed one that has few faces left to work. */
function partFor(seed: number): Part {
  return seed % 2 === 0 ? PART : { ...PART, finished: ['front', 'right', 'bottom', 'top'] };
}

function plansBy(part: Part, readings: readonly Reading[]) {
  const adjustment = adjust(equationsOf(readings, part.block, DEFAULT_KIT));
  const findings = findingsOf(part, readings, DEFAULT_KIT, 0.95, adjustment);
  const measured = findings.map((finding) => {
    if (!finding.fixed) throw new Error('Not fixed');
    return finding;
  });
  return plansFor(part, measured, sizesOf(part, adjustment), { level: 0.95, share: 0.8 });
}

function turnedLimits(rotation: Rotation, part: Part): NonNullable<Part['sizeLimits']> {
  const limits: Partial<Record<Axis, SizeLimits>> = {};
  for (const axis of AXES) limits[rotation[axis].axis] = known(part.sizeLimits?.[axis]);
  return limits;
}

describe('a block turned over, its faces renamed with it', { timeout: 60_000 }, () => {
  it.each([1, 2, 3, 4, 5, 6])('gets the same plans, put down in 24 ways: block %d', (seed) => {
    const given = partFor(seed);
    const readings = someReadings(randomFrom(seed));
    const plans = plansBy(given, readings);
    for (const rotation of ROTATIONS) {
      const part = { ...turnedPart(rotation, given), sizeLimits: turnedLimits(rotation, given) };
      const again = plansBy(
        part,
        readings.map((reading) => turnedReading(rotation, reading)),
      );
      expectClose(again.best.volume, plans.best.volume, NEAR);
      expect(again.best.possible).toBe(plans.best.possible);
      expect(again.releases).toEqual(
        part.finished.filter((face) =>
          plans.releases.some((one) => turnedFace(rotation, one) === face),
        ),
      );
      for (const plan of plans.single) {
        const face = turnedFace(rotation, plan.faces[0]!);
        const same = known(again.single.find(({ faces }) => faces[0] === face));
        expect(same.possible).toBe(plan.possible);
        expectClose(same.volume, plan.volume, NEAR);
        expectClose(same.wedge, plan.wedge, NEAR);
        expect(same.stops).toHaveLength(plan.stops.length);
        plan.steps.forEach(({ removal, highSide }, index) => {
          const slopes = turned(rotation, removal.slopes);
          for (const axis of AXES) {
            expectClose(same.steps[index]?.removal.slopes[axis] ?? 0, slopes[axis] ?? 0, NEAR);
          }
          const sides = highSide.map((side) => turnedFace(rotation, side));
          expect([...same.steps[index]!.highSide].sort()).toEqual(sides.sort());
        });
      }
    }
  });

  it('is so for blocks with a plan and blocks without', () => {
    const possible = [1, 2, 3, 4, 5, 6].map(
      (seed) => plansBy(partFor(seed), someReadings(randomFrom(seed))).best.possible,
    );
    expect(new Set(possible).size).toBe(2);
  });
});

/** The same problem with all lengths times `length` and all deviations times `deviation`. */
function inUnits({ part, measured, sizes, demand }: Problem, length: number, deviation: number) {
  const { x, y, z } = part.block.size;
  const long = (of: { x: number; y: number; z: number }) => ({
    ...{ x: of.x * length, y: of.y * length, z: of.z * length },
  });
  const limits = Object.entries(part.sizeLimits ?? {}).map(([axis, { lower, upper }]) => [
    axis,
    { lower: lower! * deviation, upper: upper! * deviation },
  ]);
  const sizesThen = Object.entries(sizes).map(([axis, corners]) => [
    axis,
    corners?.map((corner) => ({
      ...corner,
      point: long(corner.point),
      departure: corner.departure * deviation,
      standard: corner.standard * deviation,
    })),
  ]);
  return {
    demand,
    part: {
      ...part,
      block: { size: long({ x, y, z }) },
      sizeLimits: Object.fromEntries(limits) as NonNullable<Part['sizeLimits']>,
    },
    sizes: Object.fromEntries(sizesThen) as Problem['sizes'],
    measured: measured.map(({ requirement: of, zone, formPoints }) => ({
      requirement: { ...of, tolerance: of.tolerance * deviation },
      zone: {
        ...zone,
        width: zone.width * deviation,
        standard: zone.standard * deviation,
        covariance: zone.covariance * deviation ** 2,
        parts: zone.parts.map(({ value, standard }) => ({
          value: value * deviation,
          standard: standard * deviation,
        })),
      },
      formPoints: formPoints.map((point) => ({
        ...point,
        residual: point.residual * deviation,
        standard: point.standard * deviation,
      })),
    })),
  } satisfies Problem;
}

describe('a change of units', { timeout: 60_000 }, () => {
  it.each([
    ['mm and µm to inches and tenths', 1 / 25.4, 1 / 2.54],
    ['a block ten times as large', 10, 1],
    ['errors ten times as large', 1, 10],
  ])('changes plans by as much: %s', (_, length, deviation) => {
    for (const random of manyRandoms(150)) {
      const problem = anyProblem(random);
      const [plans, again] = [plansOf(problem), plansOf(inUnits(problem, length, deviation))];
      const times = length * length * deviation;
      expectClose(again.best.volume, plans.best.volume * times, NEAR);
      expect(again.best.possible).toBe(plans.best.possible);
      expect(again.releases).toEqual(plans.releases);
      expect(again.single.map(({ possible }) => possible)).toEqual(
        plans.single.map(({ possible }) => possible),
      );
      for (const plan of plans.single) {
        const same = known(again.single.find(({ faces }) => faces[0] === plan.faces[0]));
        expectClose(same.volume, plan.volume * times, NEAR);
        expectClose(same.wedge, plan.wedge * deviation, NEAR);
      }
    }
  });
});
