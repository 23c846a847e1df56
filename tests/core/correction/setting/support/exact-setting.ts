import { changeOfUnknowns, type Removal } from '../../../../../src/core/correction/removal';
import type { Tapers } from '../../../../../src/core/correction/setting/shims';
import { cornersOf } from '../../../../../src/core/part/block';
import { offsetOf, slopeOf } from '../../../../../src/core/part/face-errors';
import {
  AXES,
  axesInFace,
  FACES,
  type Face,
  oppositeFace,
} from '../../../../../src/core/part/faces';
import { cornerBetween, type ExactBlock, NORMALS, randomBlock } from '../../../support/exact-block';
import {
  cross,
  dot,
  type Plane,
  plus,
  times,
  unit,
  type Vector,
  wayTo,
} from '../../../support/exact-vectors';
import type { Random } from '../../../support/random';
import { BLOCK } from '../../../support/worked-block';

/*
 * Exact blocks are set in a machine and cut level. The level plane is laid through points of the
 * exact block; what comes of it is then held against the block with the removal taken off, as
 * planes again. The two may differ by the second order of the slopes only.
 */

/** A block and something to take off it. Sizes of all errors go with `slope`, so that orders show. */
export interface Job {
  readonly block: ExactBlock;
  readonly removal: Removal;
}

export function someJob(random: Random, slope: number): Job {
  const block = randomBlock(random, BLOCK.size, slope, 200 * slope);
  const face = FACES[Math.floor(random.between(0, FACES.length))]!;
  const [u, v] = axesInFace(face);
  const slopes = {
    [u]: random.between(-2 * slope, 2 * slope),
    [v]: random.between(-2 * slope, 2 * slope),
  };
  const least = [u, v].reduce(
    (total, axis) => total + (Math.abs(slopes[axis]!) * BLOCK.size[axis]) / 2,
    0,
  );
  return { block, removal: { face, mean: least + random.between(0, 100 * slope), slopes } };
}

/** How the thickness behind `face` really grows along its axes, µm/mm. */
export function trueTapers(block: ExactBlock, face: Face): Tapers {
  const [here, there] = [face, oppositeFace(face)].map((one) => block.errors[one].slopes);
  return Object.fromEntries(
    axesInFace(face).map((axis) => {
      const at = AXES.indexOf(axis);
      return [axis, here![at]! + there![at]!];
    }),
  );
}

/** The block with `removal` taken off. */
function cut(block: ExactBlock, removal: Removal): ExactBlock {
  const { face } = removal;
  const change = changeOfUnknowns(removal);
  const { offset, slopes } = block.errors[face];
  const along = AXES.map((axis) => change.get(slopeOf(face, axis)) ?? 0);
  const errors = {
    offset: offset + change.get(offsetOf(face))!,
    slopes: plus(slopes, [along[0]!, along[1]!, along[2]!]),
  };
  return { ...block, errors: { ...block.errors, [face]: errors } };
}

/** The plane through three points, its normal to the side that `outwards` points to. */
export function planeThrough(
  [a, b, c]: readonly [Vector, Vector, Vector],
  outwards: Vector,
): Plane {
  const across = unit(cross(plus(b, times(a, -1)), plus(c, times(a, -1))));
  const normal = dot(across, outwards) < 0 ? times(across, -1) : across;
  return { normal, distance: dot(normal, a) };
}

/** The corners of `face` on the exact block, with the neighbours that meet there. */
export function exactCorners(block: ExactBlock, face: Face) {
  return cornersOf(BLOCK, face).map(({ towards }) => ({
    towards,
    at: cornerBetween(block, face, towards),
  }));
}

/** Where `point`, moved square to `face` on the drawing, lies on the exact face. */
export function onFace(block: ExactBlock, face: Face, point: Vector): Vector {
  const [a, b, c] = exactCorners(block, face).map(({ at }) => at) as [Vector, Vector, Vector];
  const normal = NORMALS[face];
  return plus(point, times(normal, wayTo(planeThrough([a, b, c], normal), point, normal)));
}

/**
 * What the cut does that goes level with `level` from the first touch down by `depth` µm: how far
 * the new face lies off the one that was asked for, and the removal at each corner off what it
 * takes, at worst, µm.
 */
export function worstOfCut(
  { block, removal }: Job,
  level: Plane,
  depth: number,
  asked: readonly { readonly towards: readonly [Face, Face]; readonly removal: number }[],
): number {
  const height = (point: Vector) => (dot(level.normal, point) - level.distance) * 1000;
  const corners = exactCorners(block, removal.face);
  const finished = Math.max(...corners.map(({ at }) => height(at))) - depth;
  const offPlane = exactCorners(cut(block, removal), removal.face).map(({ at }) =>
    Math.abs(height(at) - finished),
  );
  const offAsked = corners.map(({ at, towards }) => {
    const one = asked.find((other) => other.towards.every((side) => towards.includes(side)))!;
    return Math.abs(height(at) - finished - one.removal);
  });
  return Math.max(...offPlane, ...offAsked);
}
