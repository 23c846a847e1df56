import {
  AXES,
  FACES,
  type Face,
  oppositeFace,
  outwardNormal,
  pairsAround,
} from '../../../src/core/part/faces';
import type { Reading } from '../../../src/core/readings/reading';
import type { ExactBlock } from './exact-block';
import { exactMicrometer, exactNose, exactTraverse } from './exact-readings';
import type { Random } from './random';
import { CENTRE } from './worked-block';

/** Each base with the two pairs of faces that can be read on it: every edge, from both its faces. */
export const PAIRS_ON_BASES: readonly (readonly [face: Face, base: Face])[] = FACES.flatMap(
  (base) => pairsAround(base).map(([face]) => [face, base] as const),
);

/**
 * The block is turned away from the comparator by up to ten times the slopes. What that does is of
 * third order: the cosine of the turn times the slope.
 */
function somePlacing(random: Random, slope: number) {
  return { yaw: random.between(-slope, slope) / 100, aside: random.between(-10, 10) };
}

/** One setting of a nose comparator swung from `face` to the opposite face. */
export function exactSwing(
  block: ExactBlock,
  face: Face,
  base: Face,
  slope: number,
  random: Random,
  setting = {
    name: 'comparator',
    zero: 32,
    low: 5,
    high: block.size[outwardNormal(base).axis] - 5,
  },
): readonly Reading[] {
  return [face, oppositeFace(face)].map((side) =>
    exactNose(block, side, base, somePlacing(random, slope), setting),
  );
}

/** One column swept along `face` and along the opposite face. */
export function exactSweep(
  block: ExactBlock,
  face: Face,
  base: Face,
  slope: number,
  random: Random,
): readonly Reading[] {
  const heights = [0.1, 0.4, 0.9].map((part) => part * block.size[outwardNormal(base).axis]);
  const lean = random.between(-slope, slope) / 1000;
  return [face, oppositeFace(face)].flatMap((side) => {
    const column = { name: 'column', lean, far: random.between(80, 120) };
    return exactTraverse(block, side, base, somePlacing(random, slope), column, heights);
  });
}

/** The thickness between `face` and its opposite at three places that fix both tapers. */
export function exactThickness(block: ExactBlock, face: Face): readonly Reading[] {
  const [u, v] = AXES.filter((axis) => axis !== outwardNormal(face).axis);
  const places = [
    [-0.4, -0.4],
    [0.4, -0.4],
    [-0.4, 0.4],
  ] as const;
  return places.map(([alongU, alongV]) => {
    const point = { ...CENTRE, [u!]: alongU * block.size[u!], [v!]: alongV * block.size[v!] };
    return exactMicrometer(block, face, point);
  });
}
