import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  deviation,
  outOfSquare,
  slopeOf,
  taper,
  thicknessDeparture,
} from '../../../src/core/part/face-errors';
import {
  FACE_PAIRS,
  FACES,
  type Face,
  oppositeFace,
  pairsAround,
} from '../../../src/core/part/faces';
import { evaluate, type LinearForm, scaled, sum } from '../../../src/core/part/linear-form';

const EDGES: readonly (readonly [Face, Face])[] = FACES.flatMap((face) =>
  pairsAround(face)
    .flat()
    .map((base) => [face, base] as const),
);

function expectNothing(form: LinearForm) {
  for (const [name, weight] of form) expect(Math.abs(weight), name).toBe(0);
}

function expectSame(one: LinearForm, other: LinearForm) {
  expectNothing(sum(one, scaled(other, -1)));
}

describe('out-of-square', () => {
  it.each(EDGES)('is the same of %s to %s and the other way round', (face, base) => {
    expectSame(outOfSquare(face, base), outOfSquare(base, face));
  });

  it('is positive where the face leans outward going away from the base', () => {
    // The right face grows outward going up: obtuse to the bottom, acute to the top.
    const leaning = new Map([[slopeOf('right', 'z'), 0.02]]);
    expect(evaluate(outOfSquare('right', 'bottom'), leaning)).toBe(0.02);
    expect(evaluate(outOfSquare('right', 'top'), leaning)).toBe(-0.02);
    expect(evaluate(outOfSquare('right', 'back'), leaning)).toBe(0);
    expect(evaluate(outOfSquare('left', 'bottom'), leaning)).toBe(0);
  });

  it('is refused for faces that share no edge', () => {
    for (const face of FACES) {
      expect(() => outOfSquare(face, oppositeFace(face))).toThrow(RangeError);
      expect(() => outOfSquare(face, face)).toThrow(RangeError);
    }
  });
});

describe('closure', () => {
  it.each(
    FACE_PAIRS.flatMap((pair, index) => FACE_PAIRS.slice(index + 1).map((other) => [pair, other])),
  )('makes nothing of the four corners of the section %s, %s', ([one, opposite], [base, other]) => {
    expectNothing(
      sum(
        outOfSquare(one!, base!),
        outOfSquare(opposite!, base!),
        outOfSquare(one!, other!),
        outOfSquare(opposite!, other!),
      ),
    );
  });

  it.each(EDGES)('makes the taper going away of %s and its opposite on %s', (face, base) => {
    const both = sum(outOfSquare(face, base), outOfSquare(oppositeFace(face), base));
    expectSame(both, taper(face, oppositeFace(base)));
  });

  it.each(EDGES)('has one taper for %s and its opposite, turned round going to %s', (face, way) => {
    expectSame(taper(face, way), taper(oppositeFace(face), way));
    expectSame(taper(face, way), scaled(taper(face, oppositeFace(way)), -1));
  });
});

describe('thickness', () => {
  const place = fc.record({
    x: fc.integer({ min: -30, max: 30 }),
    y: fc.integer({ min: -20, max: 20 }),
    z: fc.integer({ min: -45, max: 45 }),
  });

  it('is what the two faces stand out together', () => {
    fc.assert(
      fc.property(fc.constantFrom(...FACES), place, (face, point) => {
        const both = sum(deviation(face, point), deviation(oppositeFace(face), point));
        expectSame(thicknessDeparture(face, point), both);
      }),
    );
  });

  it('grows from place to place by the tapers', () => {
    fc.assert(
      fc.property(
        fc.constantFrom(...EDGES),
        place,
        fc.integer({ min: -9, max: 9 }),
        ([face, way], point, by) => {
          const ahead = {
            right: 'x',
            left: 'x',
            back: 'y',
            front: 'y',
            top: 'z',
            bottom: 'z',
          } as const;
          const sign = way === 'right' || way === 'back' || way === 'top' ? 1 : -1;
          const moved = { ...point, [ahead[way]]: point[ahead[way]] + sign * by };
          const grown = sum(
            thicknessDeparture(face, moved),
            scaled(thicknessDeparture(face, point), -1),
          );
          expectSame(grown, scaled(taper(face, way), by));
        },
      ),
    );
  });
});
