import { describe, expect, it } from 'vitest';
import { adjust } from '../../../src/core/adjustment/adjustment';
import { outOfSquare } from '../../../src/core/part/face-errors';
import { type Face, oppositeFace } from '../../../src/core/part/faces';
import { equationsOf } from '../../../src/core/readings/equations-of';
import { DEFAULT_KIT } from '../../../src/core/readings/kit';
import type { Reading } from '../../../src/core/readings/reading';
import { type ExactBlock, exactOutOfSquare, randomBlock } from '../support/exact-block';
import {
  exactSweep,
  exactSwing,
  exactThickness,
  PAIRS_ON_BASES,
} from '../support/exact-inspection';
import { known } from '../support/known';
import { manyRandoms, type Random } from '../support/random';
import { BLOCK } from '../support/worked-block';

/*
 * The equations are of first order in the slopes s. What they leave out is of second order: an
 * angle of s·10⁻³ rad leaves (s·10⁻³)² rad = s²·10⁻³ µm/mm, times a number for how many
 * slopes meet in one answer: it comes to no more than 1, as src/core/readings/equations-of.ts says.
 * Slopes ten times smaller must leave a hundredth of it: an error of first order would only shrink
 * tenfold.
 */
const SLOPE = 0.1;
const BLOCKS = 250;

type Method = (
  block: ExactBlock,
  face: Face,
  base: Face,
  slope: number,
  random: Random,
) => readonly Reading[];

/** The greatest error of out-of-square, µm/mm, over many blocks and all twelve edges. */
function worstError(method: Method, slope: number): number {
  const errors = manyRandoms(BLOCKS).flatMap((random) => {
    const block = randomBlock(random, BLOCK.size, slope);
    return PAIRS_ON_BASES.flatMap(([face, base]) => {
      const readings = method(block, face, base, slope, random);
      const adjustment = adjust(equationsOf(readings, BLOCK, DEFAULT_KIT));
      return [face, oppositeFace(face)].map((side) => {
        const found = known(adjustment.estimate(outOfSquare(side, base)));
        return Math.abs(found.value - exactOutOfSquare(block, side, base));
      });
    });
  });
  return Math.max(...errors);
}

const METHODS: readonly (readonly [string, Method])[] = [
  [
    'a nose comparator swung round, and a micrometer',
    (block, face, ...rest) => [...exactSwing(block, face, ...rest), ...exactThickness(block, face)],
  ],
  [
    'a leaning column swept on both sides, and a micrometer',
    (block, face, ...rest) => [...exactSweep(block, face, ...rest), ...exactThickness(block, face)],
  ],
  [
    'one setting on the four corners of a section, and no micrometer',
    (block, face, base, ...rest) => [
      ...exactSwing(block, face, base, ...rest),
      ...exactSwing(block, face, oppositeFace(base), ...rest),
    ],
  ],
];

describe('out-of-square on every edge of many exact blocks', { timeout: 60_000 }, () => {
  it.each(METHODS)('is exact but for the second order: by %s', (_, method) => {
    const [error, errorOfTenth] = [worstError(method, SLOPE), worstError(method, SLOPE / 10)];

    expect(error).toBeLessThan(SLOPE ** 2 / 1000);
    expect(errorOfTenth).toBeLessThan((SLOPE / 10) ** 2 / 1000);
    // There is an error, and it is not of first order.
    expect(error / errorOfTenth).toBeGreaterThan(90);
    expect(error / errorOfTenth).toBeLessThan(110);
  });
});
