import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { cornersOf } from '../../../src/core/part/block';
import {
  deviation,
  offsetOf,
  slopeOf,
  thicknessDeparture,
} from '../../../src/core/part/face-errors';
import {
  axesInFace,
  FACES,
  oppositeFace,
  outwardNormal,
  pairsAround,
} from '../../../src/core/part/faces';
import { evaluate } from '../../../src/core/part/linear-form';
import { kindOf } from '../../../src/core/part/requirement';
import { zoneForms } from '../../../src/core/zones/requirement-forms';
import { expectClose } from '../support/close';
import { BLOCK } from '../support/worked-block';

const slope = fc.integer({ min: -50, max: 50 }).map((thousandths) => thousandths / 1000);
const face = fc.constantFrom(...FACES);

/** Every slope and offset of the block, by name. */
const unknowns = fc.array(slope, { minLength: 18, maxLength: 18 }).map((values) => {
  const names = FACES.flatMap((one) => [
    offsetOf(one),
    ...axesInFace(one).map((axis) => slopeOf(one, axis)),
  ]);
  return new Map(names.map((name, index) => [name, values[index]!]));
});

function widthOf(parts: ReturnType<typeof zoneForms>, values: ReadonlyMap<string, number>): number {
  return parts.reduce((width, form) => width + Math.abs(evaluate(form, values)), 0);
}

function spread(values: readonly number[]): number {
  return Math.max(...values) - Math.min(...values);
}

describe('the parts of a zone over the full face', () => {
  it('for squareness: how far the face leans over its length away from the datum', () => {
    fc.assert(
      fc.property(face, fc.nat({ max: 3 }), unknowns, (datum, which, values) => {
        const one = pairsAround(datum).flat()[which]!;
        // Turn the block until the datum lies true: every other slope turns with it. What is left
        // is the deviation of the face's corners less what the tilt of the datum makes of them.
        const { axis, sign } = outwardNormal(one);
        const tilt = values.get(slopeOf(datum, axis))! * sign;
        const heights = outwardNormal(datum);
        const seen = cornersOf(BLOCK, one).map(({ point }) => {
          const height = -heights.sign * point[heights.axis];
          const free = { ...point, [heights.axis]: 0 };
          const turning = evaluate(deviation(one, free), values);
          return evaluate(deviation(one, point), values) - turning - height * tilt;
        });
        const width = widthOf(zoneForms({ face: one, datum }, BLOCK), values);
        expect(kindOf({ face: one, datum })).toBe('squareness');
        expectClose(width, spread(seen), { absolute: 1e-9 });
      }),
    );
  });

  it('for parallelism: from the thinnest corner to the thickest', () => {
    fc.assert(
      fc.property(face, unknowns, (one, values) => {
        const datum = oppositeFace(one);
        const seen = cornersOf(BLOCK, one).map(({ point }) =>
          evaluate(thicknessDeparture(one, point), values),
        );
        const width = widthOf(zoneForms({ face: one, datum }, BLOCK), values);
        expect(kindOf({ face: one, datum })).toBe('parallelism');
        expectClose(width, spread(seen), { absolute: 1e-9 });
      }),
    );
  });
});
