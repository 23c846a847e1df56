import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { correctingSlopes } from '../../../src/core/correction/correcting-slopes';
import { effectOf } from '../../../src/core/correction/effects';
import { outcomeOf } from '../../../src/core/correction/outcome';
import { leastRemoval, wedgeOf } from '../../../src/core/correction/removal';
import { areOpposite, FACES } from '../../../src/core/part/faces';
import { DEFAULT_LEVEL } from '../../../src/core/verdict/conformity';
import { expectClose } from '../support/close';
import { BLOCK, requirement } from '../support/worked-block';
import { doubleZone, simpleZone } from '../support/zones';

const size = fc.integer({ min: -90, max: 90 }).filter((tenths) => tenths !== 0);
const faces = fc
  .tuple(fc.constantFrom(...FACES), fc.constantFrom(...FACES))
  .filter(([face, datum]) => face !== datum);

describe('the outcome of working a face', () => {
  it.each([1, 0.5, 1.5, -0.5, 0])(
    'is %d of the wedge that was asked for, if that is what came off',
    (share) => {
      fc.assert(
        fc.property(faces, fc.boolean(), size, size, ([face, datum], onFace, first, second) => {
          const one = requirement(face, datum);
          const before = areOpposite(face, datum)
            ? doubleZone([first / 10, second / 10], [0.5, 0.5])
            : simpleZone(first / 10, 0.5);
          const worked = onFace ? face : datum;
          const slopes = correctingSlopes(one, worked, before, BLOCK);
          const asked = wedgeOf(BLOCK, leastRemoval(BLOCK, worked, slopes));
          const taken = Object.fromEntries(
            Object.entries(slopes).map(([axis, slope]) => [axis, slope * share]),
          );
          const removal = { face: worked, mean: asked, slopes: taken };
          const effect = effectOf(removal, one, before, BLOCK, DEFAULT_LEVEL);
          const after = { ...before, ...effect.after };

          const { wedge } = outcomeOf(one, worked, before, after, BLOCK);
          expectClose(wedge, share * asked, { absolute: 1e-9 });
        }),
      );
    },
  );

  it('is as doubtful as the readings before and after, over the length of the face worked', () => {
    // 3 and 4 µm over the 90 mm of the right face are 2 and 8/3 over the 60 mm of the bottom.
    const [before, after] = [simpleZone(12, 3), simpleZone(1, 4)];
    const square = requirement('right', 'bottom');
    expect(outcomeOf(square, 'right', before, after, BLOCK)).toMatchObject({
      wedge: 11,
      standard: 5,
    });
    const onBottom = outcomeOf(square, 'bottom', before, after, BLOCK);
    expectClose(onBottom.wedge, (11 * 60) / 90);
    expectClose(onBottom.standard, (5 * 60) / 90);
  });

  it('weighs the doubt in both tapers at the signs that they had before', () => {
    // Wedge = (p - p') + (q - q'): the variance of p' + q' counts, though p' and q' now differ in
    // sign. With a correlation of 1 they are 3 + 4 together, not 4 - 3.
    const before = doubleZone([10, 10], [3, 4], 1);
    const after = doubleZone([1, -1], [3, 4], 1);
    const outcome = outcomeOf(requirement('right', 'left'), 'right', before, after, BLOCK);
    expectClose(outcome.wedge, 20);
    expectClose(outcome.standard, Math.hypot(7, 7));
  });
});
