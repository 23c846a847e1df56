import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type Adjustment, adjust } from '../../../src/core/adjustment/adjustment';
import { fourSides } from '../../../src/core/inspection/candidates/four-sides';
import { inspect } from '../../../src/core/inspection/inspect';
import { outOfSquare } from '../../../src/core/part/face-errors';
import { FACE_PAIRS, type Face, oppositeFace } from '../../../src/core/part/faces';
import { unknown } from '../../../src/core/part/linear-form';
import { equationsOf } from '../../../src/core/readings/equations-of';
import { DEFAULT_KIT } from '../../../src/core/readings/kit';
import type { ColumnReading } from '../../../src/core/readings/reading';
import { leanOf } from '../../../src/core/readings/unknowns';
import { expectClose } from '../support/close';
import { exactOutOfSquare, randomBlock } from '../support/exact-block';
import { exactTraverse } from '../support/exact-readings';
import { known } from '../support/known';
import { manyRandoms } from '../support/random';
import { nose, traverse } from '../support/readings';
import { BLOCK, partWith, requirement } from '../support/worked-block';

/** A corner of a section: the face that is read, and what the block stands on. */
type Corner = readonly [face: Face, base: Face];
type Four<T> = readonly [T, T, T, T];

/** The corners round each section, begun on any of its faces and turned either way. */
const ROUNDS: readonly Four<Corner>[] = FACE_PAIRS.flatMap((one, index) =>
  FACE_PAIRS.slice(index + 1).flatMap((other) =>
    [...one, ...other].flatMap((base) =>
      (one.includes(base) ? other : one).map((face): Four<Corner> => {
        const opposite = [oppositeFace(base), oppositeFace(face)] as const;
        return [
          [face, base],
          [opposite[0], face],
          [opposite[1], opposite[0]],
          [base, opposite[1]],
        ];
      }),
    ),
  ),
);

const HEIGHTS = [5, 35] as const;

/** A traverse of two heights up each corner, of what its indicator showed there, µm. */
function read(round: Four<Corner>, shown: Four<readonly [number, number]>) {
  return round.flatMap(([face, base], at) => {
    const [low, high] = shown[at]!;
    return traverse(face, { [HEIGHTS[0]]: low, [HEIGHTS[1]]: high }, { base });
  });
}

const adjusted = (readings: readonly ColumnReading[]) =>
  adjust(equationsOf(readings, BLOCK, DEFAULT_KIT));

/** Out-of-square of each corner and the lean of the column, µm/mm. */
function found(adjustment: Adjustment, round: Four<Corner>) {
  return {
    corners: round.map(([face, base]) => known(adjustment.estimate(outOfSquare(face, base)))),
    lean: known(adjustment.estimate(unknown(leanOf('column')))),
  };
}

const micrometres = fc.integer({ min: -300, max: 300 }).map((tenths) => tenths / 10);
const twice = fc.tuple(micrometres, micrometres);
const anyShown = fc.tuple(twice, twice, twice, twice);
const anyRound = fc.constantFrom(...ROUNDS);

describe('a block turned on all four sides under one column', () => {
  it('gives the lean of the column and every corner', () => {
    const shown = [
      [0, 6],
      [1, 0],
      [-2, 5],
      [3, -1],
    ] as const;
    for (const round of ROUNDS) {
      const { corners, lean } = found(adjusted(read(round, shown)), round);
      // Slopes of 6, -1, 7 and -4 µm over 30 mm: 2 is the column's, and 4, -3, 5, -6 close to 0.
      expectClose(lean.value, 2 / 30);
      corners.forEach(({ value }, at) => {
        expectClose(value, [4, -3, 5, -6][at]! / 30);
      });
    }
  });

  it('closes: whatever was read, the four corners sum to 0', () => {
    fc.assert(
      fc.property(anyRound, anyShown, (round, shown) => {
        const { corners } = found(adjusted(read(round, shown)), round);
        const sum = corners.reduce((total, { value }) => total + value, 0);
        const size = Math.max(...corners.map(({ value }) => Math.abs(value)), 1e-3);
        expect(Math.abs(sum) / size).toBeLessThan(1e-9);
      }),
    );
  });

  it('says the same whichever side is begun with', () => {
    fc.assert(
      fc.property(anyRound, anyShown, fc.integer({ min: 1, max: 3 }), (round, shown, by) => {
        const turned = <T>(all: Four<T>) =>
          [...all.slice(by), ...all.slice(0, by)] as unknown as Four<T>;
        const first = found(adjusted(read(round, shown)), round);
        const other = found(adjusted(read(turned(round), turned(shown))), round);
        expect(other.lean.value).toBeCloseTo(first.lean.value, 9);
        expect(other.lean.standard).toBeCloseTo(first.lean.standard, 9);
        first.corners.forEach(({ value, standard }, at) => {
          expect(other.corners[at]!.value).toBeCloseTo(value, 9);
          expect(other.corners[at]!.standard).toBeCloseTo(standard, 9);
        });
      }),
    );
  });

  it('needs nobody’s word on the taper, and all four of them', () => {
    const round = ROUNDS[0]!;
    const readings = read(round, [
      [0, 6],
      [1, 0],
      [-2, 5],
      [3, -1],
    ]);
    const part = partWith(round.map(([face, base]) => requirement(face, base, 5)));
    for (const finding of inspect(part, readings, DEFAULT_KIT, 0.95).findings) {
      expect(finding).toMatchObject({ fixed: true, assumed: false });
    }
    const [face, base] = round[0];
    expect(adjusted(readings.slice(0, -2)).estimate(outOfSquare(face, base))).toBeUndefined();
  });

  it('finds the corners of blocks of exact planes, but for the second order', () => {
    const slope = 0.1;
    const off = manyRandoms(240, 7).flatMap((random, seed) => {
      const round = ROUNDS[seed % ROUNDS.length]!;
      const block = randomBlock(random, BLOCK.size, slope);
      const column = { name: 'column', lean: random.between(-1e-4, 1e-4), far: 100 };
      const readings = round.flatMap(([face, base]) => {
        const placing = {
          yaw: random.between(-slope, slope) / 100,
          aside: random.between(-10, 10),
        };
        return exactTraverse(block, face, base, placing, column, HEIGHTS);
      });
      const adjustment = adjust(equationsOf(readings, BLOCK, DEFAULT_KIT));
      const { corners, lean } = found(adjustment, round);
      return [
        ...corners.map(({ value }, at) => value - exactOutOfSquare(block, ...round[at]!)),
        lean.value - column.lean * 1000,
      ];
    });
    expect(Math.max(...off.map(Math.abs))).toBeLessThan(1e-5);
  });
});

describe('what would fix a section that a column has read', () => {
  const [right, left] = [traverse('right', { 5: 0, 35: 6 }), traverse('left', { 5: 3, 35: -1 })];

  it('is the two corners more that it lacks, each a placing of its own at the same heights', () => {
    const [candidate, ...others] = fourSides('right', 'bottom', [...right, ...left], BLOCK);
    expect(others).toEqual([]);
    expect(candidate?.remedy).toMatchObject({ kind: 'turn on all four sides', column: 'column' });
    expect(candidate?.readings).toMatchObject([
      { face: 'top', base: 'right', height: 5 },
      { face: 'top', base: 'right', height: 35 },
      { face: 'left', base: 'top', height: 5 },
      { face: 'left', base: 'top', height: 35 },
    ]);
    const placings = candidate?.readings.map((one) => one.kind === 'column' && one.placing);
    expect(new Set(placings).size).toBe(2);
    expect(new Set(candidate?.readings.map(({ id }) => id)).size).toBe(4);
    const fixed = adjusted([...right, ...left, ...(candidate!.readings as ColumnReading[])]);
    expect(fixed.estimate(outOfSquare('right', 'bottom'))).toBeDefined();
  });

  it('counts no corner as read where the column stopped at one height', () => {
    const stopped = traverse('top', { 5: 1 }, { base: 'right' });
    const [candidate] = fourSides('right', 'bottom', [...right, ...left, ...stopped], BLOCK);
    expect(candidate?.readings).toHaveLength(4);
    expect(fourSides('right', 'bottom', stopped, BLOCK)).toEqual([]);
  });

  it('is nothing where all was read in another section, with a comparator too', () => {
    const compared = nose('right', 1, { low: 5, high: 25 });
    expect(fourSides('right', 'bottom', [compared], BLOCK)).toHaveLength(1);
    expect(fourSides('right', 'front', [...right, ...left, compared], BLOCK)).toEqual([]);
  });

  it('is nothing with a block that is lower on its side than the column was run up', () => {
    const tall = traverse('right', { 5: 0, [BLOCK.size.x + 1]: 6 });
    expect(fourSides('right', 'bottom', tall, BLOCK)).toEqual([]);
  });
});
