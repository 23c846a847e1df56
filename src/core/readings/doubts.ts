import { type Block, depthBehind, type Triple } from '../part/block';
import { taper } from '../part/face-errors';
import { type Axis, axesInFace, type Face, faceTowards, outwardNormal } from '../part/faces';
import { type LinearForm, scaled } from '../part/linear-form';
import { leverMovement, leverUncertainty } from '../statistics/lever-angle';
import { localFlatness } from '../statistics/plate-flatness';
import { leanByWarmth, taperByWarmth } from '../statistics/temperature-gradient';
import { fromResolution, withinLimits } from './distributions';
import type { Component, SharedDoubt } from './equation';
import type { Kit } from './kit';

/** The doubt of the indicator itself in one reading. */
export function indicatorDoubt(kit: Kit): readonly Component[] {
  const across = leverMovement(1, kit.leverAngle);
  return [
    { cause: 'indicator resolution', standard: fromResolution(kit.indicatorResolution) * across },
    { cause: 'indicator error', standard: withinLimits(kit.indicatorError) * across },
  ];
}

/** The doubt of one thickness by micrometer. */
export function micrometerDoubt(kit: Kit): readonly Component[] {
  return [
    { cause: 'micrometer resolution', standard: fromResolution(kit.micrometerResolution) },
    { cause: 'micrometer error', standard: withinLimits(kit.micrometerError) },
  ];
}

/**
 * The doubt of one reading of a face map by itself, the block standing on jacks: the stand slides over
 * the plate, so that the plate's rise and fall goes into the reading in full.
 */
export function mapDoubt(face: Face, block: Block, kit: Kit): readonly Component[] {
  const length = Math.max(...axesInFace(face).map((axis) => block.size[axis]));
  return [
    ...indicatorDoubt(kit),
    { cause: 'plate', standard: withinLimits(plateOver(length, kit)) },
  ];
}

/** How far the plate rises or falls over `length` mm, either way, µm. */
function plateOver(length: number, { plate, plateOverall: whole }: Kit): number {
  return whole ? localFlatness(whole.flatness, whole.diagonal, length) : plate;
}

/** How the block may sit tilted along the axis of `face`: standard uncertainties in µm per mm. */
export function sittingDoubt(face: Face, block: Block, kit: Kit): readonly Component[] {
  const length = depthBehind(block, face);
  return [
    {
      cause: 'seating',
      standard: kit.seating / length,
      degreesOfFreedom: kit.seatingDegrees,
    },
    { cause: 'plate', standard: withinLimits(plateOver(length, kit)) / length },
  ];
}

/** A height of `setting` that is only set so well; `rate` is what a mm of it does, µm/mm. */
export function heightDoubt(setting: string, rate: LinearForm, kit: Kit): SharedDoubt {
  return {
    cause: 'height setting',
    source: `height of ${setting}`,
    shift: scaled(rate, kit.heightSetting),
  };
}

/** A place on a face that is only hit so well, along either axis of the face. */
export function placeDoubt(reading: string, face: Face, kit: Kit): readonly SharedDoubt[] {
  return axesInFace(face).map((axis) =>
    heightDoubt(`${reading} along ${axis}`, taper(face, faceTowards(axis, 1)), kit),
  );
}

/** The lever's angle, known only so well, scales every reading of a setting alike. */
export function leverDoubt(setting: string, reading: number, kit: Kit): readonly SharedDoubt[] {
  if (kit.leverWithin === 0) return [];
  const shift = Math.sign(reading) * leverUncertainty(reading, kit.leverAngle, kit.leverWithin);
  return [{ cause: 'lever angle', source: `lever of ${setting}`, shift }];
}

/**
 * What warmth along either axis of the section of `face` and `base` does to a reading `reach` mm
 * up: the warm face leans in and the cool one out, whichever of the two lies across the warmth.
 */
export function leanWarmth(
  face: Face,
  base: Face,
  reach: number,
  block: Block,
  kit: Kit,
): readonly SharedDoubt[] {
  return [
    [face, base],
    [base, face],
  ].flatMap(([crossed, other]) => {
    const { axis, sign } = outwardNormal(crossed as Face);
    const gradient = gradientOf(axis, outwardNormal(other as Face).axis, block, kit);
    if (gradient === undefined) return [];
    const shift = -sign * leanByWarmth(gradient) * reach;
    return [warmthAlong(axis, shift)];
  });
}

/** What warmth along either axis in `face` does to a thickness behind it at `point`. */
export function thicknessWarmth(
  face: Face,
  point: Triple,
  block: Block,
  kit: Kit,
): readonly SharedDoubt[] {
  const { axis: through } = outwardNormal(face);
  return (['x', 'y', 'z'] as const)
    .filter((axis) => axis !== through)
    .flatMap((axis) => {
      const gradient = gradientOf(axis, through, block, kit);
      if (gradient === undefined) return [];
      return [warmthAlong(axis, taperByWarmth(gradient) * point[axis])];
    });
}

/**
 * How far warmth through the block bows `face` at `point`, µm for one standard uncertainty: a round of
 * the radius 1/k, the same along both axes (`temperature-gradient.ts`).
 */
export function bowOfWarmth(face: Face, point: Triple, block: Block, kit: Kit): number {
  const { axis: through } = outwardNormal(face);
  return axesInFace(face).reduce((total, axis) => {
    const gradient = gradientOf(through, axis, block, kit);
    if (gradient === undefined) return total;
    const curvature = taperByWarmth(gradient) / gradient.across;
    return total + (curvature * point[axis] ** 2) / 2;
  }, 0);
}

function warmthAlong(axis: Axis, shift: number): SharedDoubt {
  return { cause: 'warmth', source: `warmth along ${axis}`, shift };
}

/** A gradient of one standard uncertainty, the difference being anywhere within ±warmth. */
function gradientOf(axis: Axis, other: Axis, block: Block, kit: Kit) {
  if (block.expansion === undefined || kit.warmth === 0) return undefined;
  return {
    coefficient: block.expansion,
    difference: withinLimits(kit.warmth),
    along: block.size[axis],
    across: block.size[other],
  };
}
