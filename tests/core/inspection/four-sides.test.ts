import { describe, expect, it } from 'vitest';
import { adjust } from '../../../src/core/adjustment/adjustment';
import { inspect } from '../../../src/core/inspection/inspect';
import { outOfSquare, taper } from '../../../src/core/part/face-errors';
import { FACE_PAIRS, type Face, oppositeFace } from '../../../src/core/part/faces';
import { type LinearForm, scaled, unknown } from '../../../src/core/part/linear-form';
import { equationsOf } from '../../../src/core/readings/equations-of';
import { DEFAULT_KIT, type Kit } from '../../../src/core/readings/kit';
import { zeroOfSetting } from '../../../src/core/readings/unknowns';
import { FOUR_CORNERS } from '../reference/reversals';
import { expectClose } from '../support/close';
import { exactOutOfSquare, randomBlock } from '../support/exact-block';
import { exactNose } from '../support/exact-readings';
import { known } from '../support/known';
import { manyRandoms, type Random } from '../support/random';
import { nose } from '../support/readings';
import { BLOCK, partWith, requirement } from '../support/worked-block';

/** An indicator with a standard uncertainty of 1 µm, and nothing else in doubt. */
const KIT: Kit = {
  ...DEFAULT_KIT,
  indicatorResolution: Math.sqrt(12),
  indicatorError: 0,
  seating: 0,
  plate: 0,
  heightSetting: 0,
};
const PLACE = { low: 5, high: 35 };
const REACH = 30;

type Four = readonly [Face, Face, Face, Face];

/** Round each section of the block, each way and from each of its faces: what it stands on, in turn. */
const ROUNDS: readonly Four[] = FACE_PAIRS.flatMap((one, index) =>
  FACE_PAIRS.slice(index + 1).flatMap((other) =>
    [...one, ...other].flatMap((base) =>
      (one.includes(base) ? other : one).map((face): Four => {
        return [base, face, oppositeFace(base), oppositeFace(face)];
      }),
    ),
  ),
);

/** The block stands on each in turn, and the next face is read. */
function cornersOf(round: Four): readonly (readonly [face: Face, base: Face])[] {
  return round.map((base, index) => [round[(index + 1) % 4]!, base]);
}

describe('one setting turned on all four sides', () => {
  const { m, r, c, standardOfCorner, standardOfR } = FOUR_CORNERS;

  it('can be in three sections, begun on four faces and turned either way', () => {
    expect(new Set(ROUNDS.map((round) => round.join())).size).toBe(3 * 4 * 2);
  });

  it.each(ROUNDS)('gives r = mean of m and the corners m - r: %s, %s, %s, %s', (...round) => {
    const corners = cornersOf(round);
    const readings = corners.map(([face, base], at) => nose(face, m[at]!, { ...PLACE, base }));
    const part = partWith(corners.map(([face, base]) => requirement(face, base, 5)));
    const { findings, comparators, kit } = inspect(part, readings, KIT, 0.95);
    expect(kit).toEqual(KIT);
    expectClose(comparators[0]?.estimate?.value, r);
    expectClose(comparators[0]?.estimate?.standard, standardOfR);
    const adjustment = adjust(equationsOf(readings, BLOCK, KIT));
    corners.forEach(([face, base], at) => {
      const corner = known(adjustment.estimate(scaled(outOfSquare(face, base), REACH)));
      expectClose(corner.value, c[at]!);
      expectClose(corner.standard, standardOfCorner);
      // Nobody had to say anything of the taper.
      expect(findings[at]).toMatchObject({ fixed: true, assumed: false });
    });
  });

  it('leaves nothing fixed where one of the four is missing', () => {
    const three = cornersOf(ROUNDS[0]!).slice(0, 3);
    const readings = three.map(([face, base], at) => nose(face, m[at]!, { ...PLACE, base }));
    const adjustment = adjust(equationsOf(readings, BLOCK, KIT));
    for (const [face, base] of three) {
      expect(adjustment.estimate(outOfSquare(face, base))).toBeUndefined();
    }
  });
});

describe('on blocks of exact planes, skewed at random', () => {
  const ZERO = 17;

  function turned(round: Four, slope: number, random: Random) {
    const block = randomBlock(random, BLOCK.size, slope);
    const setting = { name: 'comparator', zero: ZERO, ...PLACE };
    const readings = cornersOf(round).map(([face, base]) => {
      const yaw = random.between(-slope, slope) / 100;
      return exactNose(block, face, base, { yaw, aside: random.between(-10, 10) }, setting);
    });
    return { block, adjustment: adjust(equationsOf(readings, BLOCK, KIT)) };
  }

  /** The most that corners and taper, by corner, are off, µm/mm, and the zero over the reach. */
  function worst(slope: number, seeds: number) {
    const errors = manyRandoms(seeds, 11).map((random, seed) => {
      const round = ROUNDS[seed % ROUNDS.length]!;
      const corners = cornersOf(round);
      const { block, adjustment } = turned(round, slope, random);
      const fixedAt = (form: LinearForm) => known(adjustment.estimate(form)).value;
      const [base, face] = round;
      const leans = [face, oppositeFace(face)].map((side) => exactOutOfSquare(block, side, base));
      const exact = corners.map(([read, on]) => exactOutOfSquare(block, read, on));
      const found = corners.map(([read, on]) => fixedAt(outOfSquare(read, on)));
      // Planes askew to the section do not quite close: the mean takes a quarter of that for itself.
      const unclosed = exact.reduce((total, one) => total + one, 0) / 4;
      const zero = fixedAt(unknown(zeroOfSetting('comparator')));
      return {
        off: [
          ...found.map((one, at) => one - exact[at]!),
          (fixedAt(taper(face, oppositeFace(base))) - leans[0]! - leans[1]!) / 2,
          (zero - ZERO) / REACH,
        ],
        beyondClosure: found.map((one, at) => one - exact[at]! + unclosed),
      };
    });
    const most = (all: readonly number[]) => Math.max(...all.map(Math.abs));
    return {
      off: most(errors.flatMap(({ off }) => off)),
      beyondClosure: most(errors.flatMap(({ beyondClosure }) => beyondClosure)),
    };
  }

  it('all comes out right but for the second order: 1e-5 µm/mm at slopes of 0.1', () => {
    const { off, beyondClosure } = worst(0.1, 480);
    expect(off).toBeLessThan(1e-5);
    expect(beyondClosure).toBeLessThan(1e-7);
  });

  it('what is left falls with the square of the slopes', () => {
    const [coarse, fine] = [worst(3, 240).off, worst(0.3, 240).off];
    expect(coarse).toBeGreaterThan(1e-3);
    expect(fine).toBeLessThan(coarse / 80);
  });
});
