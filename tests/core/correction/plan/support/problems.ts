import type { Demand } from '../../../../../src/core/correction/plan/aim';
import type { MeasuredRequirement } from '../../../../../src/core/correction/plan/plan';
import { type Plans, plansFor } from '../../../../../src/core/correction/plan/plans-for';
import type { SizeAtCorner, Sizes } from '../../../../../src/core/correction/plan/sizes';
import { type Block, cornersOf } from '../../../../../src/core/part/block';
import { type Axis, FACES, type Face, faceTowards } from '../../../../../src/core/part/faces';
import type { Part, SizeLimits } from '../../../../../src/core/part/part';
import { kindOf, type Requirement } from '../../../../../src/core/part/requirement';
import type { FormPoint } from '../../../../../src/core/zones/zone-with-form';
import { wholeBetween } from '../../../linear-program/support/programs';
import type { Random } from '../../../support/random';
import { partWith, requirement } from '../../../support/worked-block';
import { doubleZone, simpleZone } from '../../../support/zones';

/** All that plans are made from. */
export interface Problem {
  readonly part: Part;
  readonly measured: readonly MeasuredRequirement[];
  readonly sizes: Sizes;
  readonly demand: Demand;
}

export const NO_SIZES: Sizes = { x: undefined, y: undefined, z: undefined };

export function plansOf({ part, measured, sizes, demand }: Problem): Plans {
  return plansFor(part, measured, sizes, demand);
}

/** A size that is `departures` from the nominal one at the four corners, or at all of them, µm. */
export function sizeOf(
  block: Block,
  axis: Axis,
  departures: number | readonly number[],
  standard = 0,
  degreesOfFreedom = Number.POSITIVE_INFINITY,
): readonly SizeAtCorner[] {
  return cornersOf(block, faceTowards(axis, 1)).map((corner, index) => ({
    ...corner,
    departure: typeof departures === 'number' ? departures : departures[index]!,
    standard,
    degreesOfFreedom,
  }));
}

/** How likely each thing is to be there. */
export interface Likely {
  readonly finished: number;
  readonly form: number;
  readonly limit: number;
}

export const ANYTHING: Likely = { finished: 0.25, form: 0.3, limit: 0.4 };

/**
 * A block of some size with up to six requirements on any faces, each found some µm out with some
 * doubt, faces finished, sizes known and limited as it comes.
 */
export function anyProblem(random: Random, likely = ANYTHING): Problem {
  const isSo = (share: number) => random.between(0, 1) < share;
  const length = () => random.between(20, 150);
  const block: Block = { size: { x: length(), y: length(), z: length() } };
  const requirements = someRequirements(random);
  const finished = FACES.filter(() => isSo(likely.finished));
  const measured = requirements.map((one) => measuredSomehow(random, one, isSo(likely.form)));
  const sizes = { ...NO_SIZES };
  const sizeLimits: Partial<Record<Axis, SizeLimits>> = {};
  for (const axis of ['x', 'y', 'z'] as const) {
    if (isSo(0.7)) sizes[axis] = someSize(random, block, axis);
    if (isSo(likely.limit)) sizeLimits[axis] = { lower: random.between(-12, -1), upper: 0 };
  }
  const demand = { level: random.between(0.8, 0.99), share: random.between(0.3, 1) };
  return {
    part: { ...partWith(requirements, finished, block), sizeLimits },
    measured,
    sizes,
    demand,
  };
}

function someRequirements(random: Random): readonly Requirement[] {
  const pairs = new Map<string, Requirement>();
  for (let count = wholeBetween(random, 1, 6); count > 0; count -= 1) {
    const [face, datum] = [someFace(random), someFace(random)];
    if (face === datum) continue;
    const one = requirement(face, datum, random.between(2, 12));
    pairs.set(one.id, one);
  }
  return [...pairs.values()];
}

function someFace(random: Random): Face {
  return FACES[wholeBetween(random, 0, FACES.length - 1)]!;
}

function measuredSomehow(random: Random, one: Requirement, hasForm: boolean): MeasuredRequirement {
  const value = () => random.between(-8, 8);
  const standard = () => random.between(0, 1);
  const degreesOfFreedom =
    random.between(0, 1) < 0.5 ? Number.POSITIVE_INFINITY : random.between(2, 30);
  const correlation = random.between(-0.95, 0.95);
  const zone =
    kindOf(one) === 'squareness'
      ? simpleZone(value(), standard())
      : doubleZone([value(), value()], [standard(), standard()], correlation);
  const formPoints = hasForm ? someForm(random, zone.parts.length) : [];
  return { requirement: one, zone: { ...zone, degreesOfFreedom }, formPoints };
}

export function someForm(random: Random, parts: number): readonly FormPoint[] {
  return Array.from({ length: wholeBetween(random, 3, 9) }, () => ({
    shares: Array.from({ length: parts }, () => random.between(-0.5, 0.5)),
    residual: random.between(-1.5, 1.5),
    group: 'form',
    standard: random.between(0, 0.2),
  }));
}

function someSize(random: Random, block: Block, axis: Axis): readonly SizeAtCorner[] {
  const departures = [0, 1, 2, 3].map(() => random.between(-3, 5));
  return sizeOf(block, axis, departures, random.between(0, 1), random.between(3, 50));
}
