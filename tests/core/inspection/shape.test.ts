import { describe, expect, it } from 'vitest';
import type { Adjustment } from '../../../src/core/adjustment/adjustment';
import { shapeOf } from '../../../src/core/inspection/shape';
import { outOfSquare, slopeOf, taper } from '../../../src/core/part/face-errors';
import { AXES, areNeighbours, axesInFace, FACES, faceTowards } from '../../../src/core/part/faces';
import { evaluate, type LinearForm } from '../../../src/core/part/linear-form';
import { expectClose } from '../support/close';
import { randomFrom } from '../support/random';

/** An adjustment that knows the value of every form that `knows` lets through. */
function knowing(
  values: ReadonlyMap<string, number>,
  knows: (form: LinearForm) => boolean = () => true,
): Adjustment {
  const known = (form: LinearForm) => (knows(form) ? evaluate(form, values) : undefined);
  return { valueOf: known } as Adjustment;
}

function randomSlopes(seed: number): ReadonlyMap<string, number> {
  const random = randomFrom(seed);
  return new Map(
    FACES.flatMap((face) =>
      axesInFace(face).map((axis) => [slopeOf(face, axis), random.between(-0.3, 0.3)] as const),
    ),
  );
}

describe('the shape of a block, to be drawn', () => {
  it.each(FACES)(
    'standing on its %s, has every angle and taper that it was measured with',
    (datum) => {
      for (let seed = 1; seed <= 20; seed += 1) {
        const values = randomSlopes(seed);
        const shape = shapeOf({ datum }, knowing(values));
        const drawn = new Map(
          FACES.flatMap((face) =>
            axesInFace(face).map(
              (axis) => [slopeOf(face, axis), shape[face]?.[axis] ?? 0] as const,
            ),
          ),
        );
        for (const face of FACES) {
          for (const other of FACES.filter((each) => areNeighbours(each, face))) {
            const form = outOfSquare(face, other);
            expectClose(evaluate(form, drawn), evaluate(form, values), { absolute: 1e-12 });
          }
          for (const axis of AXES.filter((each) => axesInFace(face).includes(each))) {
            const form = taper(face, faceTowards(axis, 1));
            expectClose(evaluate(form, drawn), evaluate(form, values), { absolute: 1e-12 });
          }
        }
      }
    },
  );

  it('leaves out what is not fixed, and the datum is true', () => {
    const shape = shapeOf(
      { datum: 'bottom' },
      knowing(randomSlopes(1), () => false),
    );
    expect(shape).toEqual({
      bottom: {},
      top: {},
      ...Object.fromEntries(
        FACES.filter((face) => areNeighbours(face, 'bottom')).map((face) => [
          face,
          face === 'right' ? { y: 0 } : {},
        ]),
      ),
    });
  });
});
