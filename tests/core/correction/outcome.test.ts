import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { effectOf } from '../../../src/core/correction/effects';
import { outcomeOf } from '../../../src/core/correction/outcome';
import { leastRemoval, wedgeOf } from '../../../src/core/correction/removal';
import { areOpposite, FACES } from '../../../src/core/part/faces';
import { DEFAULT_LEVEL } from '../../../src/core/verdict/conformity';
import { expectClose } from '../support/close';
import { slopesToNothing } from '../support/slopes-to-nothing';
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
          const slopes = slopesToNothing(one, worked, before, BLOCK);
          const asked = wedgeOf(BLOCK, leastRemoval(BLOCK, worked, slopes));
          const taken = Object.fromEntries(
            Object.entries(slopes).map(([axis, slope]) => [axis, slope * share]),
          );
          const advised = leastRemoval(BLOCK, worked, slopes);
          const removal = { face: worked, mean: asked, slopes: taken };
          const effect = effectOf(removal, one, before, BLOCK, DEFAULT_LEVEL);
          const after = { ...before, ...effect.after };

          const outcome = outcomeOf(advised, [{ requirement: one, before, after }], BLOCK);
          expectClose(outcome?.wedge, share * asked, { absolute: 1e-9 });
        }),
      );
    },
  );

  const wedgeOn = (face: 'right' | 'bottom', axis: 'x' | 'z', slope = 0.1) =>
    leastRemoval(BLOCK, face, { [axis]: slope });

  it('is as doubtful as the readings before and after, over the length of the face worked', () => {
    // 3 and 4 µm over the 90 mm of the right face are 2 and 8/3 over the 60 mm of the bottom.
    const [before, after] = [simpleZone(12, 3), simpleZone(1, 4)];
    const square = [{ requirement: requirement('right', 'bottom'), before, after }];
    const onRight = outcomeOf(wedgeOn('right', 'z'), square, BLOCK)!;
    expectClose(onRight.wedge, 11);
    expectClose(onRight.standard, 5);
    // Obtuse at the right: the bottom is high at its left, towards minus x.
    const onBottom = outcomeOf(wedgeOn('bottom', 'x', -0.1), square, BLOCK)!;
    expectClose(onBottom.wedge, (11 * 60) / 90);
    expectClose(onBottom.standard, (5 * 60) / 90);
    // Advised the other way, the same change went the wrong way.
    expectClose(outcomeOf(wedgeOn('bottom', 'x'), square, BLOCK)!.wedge, (-11 * 60) / 90);
  });

  it('weighs the doubt in both tapers at the signs that were advised', () => {
    // Wedge = (p - p') + (q - q'): with a correlation of 1 the two doubts are 3 + 4 together.
    const before = doubleZone([10, 10], [3, 4], 1);
    const after = doubleZone([1, -1], [3, 4], 1);
    const parallel = requirement('right', 'left');
    const advised = leastRemoval(BLOCK, 'right', slopesToNothing(parallel, 'right', before, BLOCK));
    const outcome = outcomeOf(advised, [{ requirement: parallel, before, after }], BLOCK)!;
    expectClose(outcome.wedge, 20);
    expectClose(outcome.standard, Math.hypot(7, 7));
  });

  it('takes each slope from the requirement that knows it best', () => {
    const vague = [simpleZone(9, 3), simpleZone(0, 3)] as const;
    const sharp = [simpleZone(6, 0.3), simpleZone(1, 0.4)] as const;
    // Left and right are square to the bottom, each telling of the bottom's slope along x.
    const remeasured = [
      { requirement: requirement('right', 'bottom'), before: vague[0], after: vague[1] },
      { requirement: requirement('left', 'bottom'), before: sharp[0], after: sharp[1] },
    ];
    const outcome = outcomeOf(wedgeOn('bottom', 'x'), remeasured, BLOCK)!;
    expectClose(outcome.wedge, (5 * 60) / 90);
    expectClose(outcome.standard, (0.5 * 60) / 90);
    expect(outcomeOf(wedgeOn('bottom', 'x'), [...remeasured].reverse(), BLOCK)).toEqual(outcome);
  });

  it('is not told where one of the slopes that were advised is told by none', () => {
    const square = (face: 'right' | 'back') => ({
      requirement: requirement(face, 'bottom'),
      before: simpleZone(9, 3),
      after: simpleZone(1, 4),
    });
    // Obtuse at both: the bottom is high towards minus x and minus y.
    const both = leastRemoval(BLOCK, 'bottom', { x: -0.1, y: -0.1 });
    expect(outcomeOf(both, [square('right')], BLOCK)).toBeUndefined();
    expect(outcomeOf(both, [square('back')], BLOCK)).toBeUndefined();
    // Along x 8 · 60/90, along y 8 · 40/90: each from a zone of its own.
    const outcome = outcomeOf(both, [square('right'), square('back')], BLOCK)!;
    expectClose(outcome.wedge, (8 * (60 + 40)) / 90);
    expectClose(outcome.standard, (5 * Math.hypot(60, 40)) / 90);
  });

  it('knows the doubts of two zones apart by their own degrees of freedom', () => {
    const square = (face: 'right' | 'back', degreesOfFreedom: number) => {
      const zone = { ...simpleZone(1, 3), degreesOfFreedom };
      return { requirement: requirement(face, 'bottom'), before: zone, after: simpleZone(1, 0) };
    };
    const both = leastRemoval(BLOCK, 'bottom', { x: 0.1, y: 0.1 });
    const outcome = outcomeOf(both, [square('right', 4), square('back', 9)], BLOCK)!;
    // Welch and Satterthwaite (GUM G.4.1): u⁴/(a⁴/4 + b⁴/9) with a = 3·60/90 and b = 3·40/90.
    const [a, b] = [2, 4 / 3];
    expectClose(outcome.degreesOfFreedom, Math.hypot(a, b) ** 4 / (a ** 4 / 4 + b ** 4 / 9), {
      relative: 1e-9,
    });
  });

  it('is not told by a taper between faces that were not worked', () => {
    const taper = [doubleZone([3, 4], [0.5, 0.5]), doubleZone([1, 1], [0.5, 0.5])] as const;
    for (const face of ['front', 'right'] as const) {
      const opposite = face === 'front' ? 'back' : 'left';
      const one = { requirement: requirement(face, opposite), before: taper[0], after: taper[1] };
      expect(outcomeOf(wedgeOn('bottom', 'x'), [one], BLOCK)).toBeUndefined();
    }
  });

  it('is not told where one time has no such part', () => {
    const parallel = requirement('top', 'bottom');
    const [double, simple] = [doubleZone([3, 4], [0.5, 0.5]), simpleZone(1, 0.5)];
    const along = leastRemoval(BLOCK, 'bottom', { y: 0.1 });
    for (const [before, after] of [
      [double, simple],
      [simple, double],
    ] as const) {
      expect(outcomeOf(along, [{ requirement: parallel, before, after }], BLOCK)).toBeUndefined();
    }
  });

  it('is not told by requirements that do not feel the slope', () => {
    const remeasured = [
      {
        requirement: requirement('back', 'bottom'),
        before: simpleZone(5, 1),
        after: simpleZone(1, 1),
      },
      {
        requirement: requirement('right', 'front'),
        before: simpleZone(5, 1),
        after: simpleZone(1, 1),
      },
    ];
    expect(outcomeOf(wedgeOn('bottom', 'x'), remeasured, BLOCK)).toBeUndefined();
    expect(outcomeOf(wedgeOn('bottom', 'x'), [], BLOCK)).toBeUndefined();
    const level = { face: 'bottom', mean: 3, slopes: {} } as const;
    expect(outcomeOf(level, remeasured, BLOCK)).toBeUndefined();
  });
});
