import { describe, expect, it } from 'vitest';
import { type Adjustment, adjust } from '../../../src/core/adjustment/adjustment';
import { offsetOf, taper } from '../../../src/core/part/face-errors';
import {
  axesInFace,
  FACES,
  type Face,
  faceTowards,
  oppositeFace,
} from '../../../src/core/part/faces';
import { unknown } from '../../../src/core/part/linear-form';
import { equationsOf } from '../../../src/core/readings/equations-of';
import { DEFAULT_KIT, type Kit } from '../../../src/core/readings/kit';
import type { FaceMapReading, OverTheTopReading } from '../../../src/core/readings/reading';
import { zeroOfPlacing } from '../../../src/core/readings/unknowns';
import { expectClose } from '../support/close';
import { exactOutOfSquare, randomBlock, thickness } from '../support/exact-block';
import { known } from '../support/known';
import { manyRandoms } from '../support/random';
import { BLOCK, CENTRE } from '../support/worked-block';

const EXACT: Kit = {
  ...DEFAULT_KIT,
  indicatorResolution: 1e-9,
  indicatorError: 0,
  seating: 0,
  plate: 0,
  heightSetting: 0,
  seatingDegrees: Number.POSITIVE_INFINITY,
};

/** Readings at shares of ±0.4 of the face and at its middle, nine in all; `shown` by place. */
function grid(
  face: Face,
  shown: (point: typeof CENTRE) => number,
  placing = 'placing',
): readonly OverTheTopReading[] {
  const [u, v] = axesInFace(face);
  return [-0.4, 0, 0.4].flatMap((alongU) =>
    [-0.4, 0, 0.4].map((alongV): OverTheTopReading => {
      const point = { ...CENTRE, [u]: alongU * BLOCK.size[u], [v]: alongV * BLOCK.size[v] };
      const id = `${placing} ${face} ${alongU} ${alongV}`;
      return { kind: 'over the top', id, placing, face, point, value: shown(point) };
    }),
  );
}

/** What the adjustment says of both tapers of `face`. */
function tapersOf(face: Face, adjustment: Adjustment) {
  return axesInFace(face).map((axis) =>
    known(adjustment.estimate(taper(face, faceTowards(axis, 1)))),
  );
}

const solved = (readings: readonly (OverTheTopReading | FaceMapReading)[], kit: Kit = EXACT) =>
  adjust(equationsOf(readings, BLOCK, kit));

describe('an indicator over the top', () => {
  it.each(FACES)('finds both tapers of an exact block standing on the face below: %s', (face) => {
    for (const random of manyRandoms(25, 3)) {
      const block = randomBlock(random, BLOCK.size, 0.1);
      const zero = random.between(-100, 100);
      const height = ({ x, y, z }: typeof CENTRE) =>
        1000 * thickness(block, face, oppositeFace(face), [x, y, z]) + zero;
      const found = tapersOf(face, solved(grid(face, height)));
      axesInFace(face).forEach((axis, index) => {
        const base = faceTowards(axis, -1);
        const exact =
          exactOutOfSquare(block, face, base) + exactOutOfSquare(block, oppositeFace(face), base);
        expectClose(found[index]!.value, exact, { absolute: 3e-5 });
      });
    }
  });

  it('leaves the zero of the placing free, and with it the thickness', () => {
    const shown = (point: typeof CENTRE) => 0.01 * point.x - 0.02 * point.y;
    const [low, high] = [0, 1234].map((zero) => solved(grid('top', (at) => zero + shown(at))));
    const tapers = tapersOf('top', high!);
    tapersOf('top', low!).forEach((one, index) => {
      expectClose(tapers[index]!.value, one.value, { absolute: 1e-9 });
    });
    for (const name of [zeroOfPlacing('placing'), offsetOf('top'), offsetOf('bottom')]) {
      expect(high!.estimate(unknown(name))).toBeUndefined();
    }
  });

  it('carries how the block sits into each taper, whatever the number of places', () => {
    const kit = { ...EXACT, seating: 0.3, plate: 0.5 };
    const atOnce = tapersOf(
      'top',
      solved(
        grid('top', () => 0),
        kit,
      ),
    );
    // A block lifted by s over its length leans by s over it (GUM 4.3.7 for the limit: a/√3).
    const tilt = Math.hypot(0.3, 0.5 / Math.sqrt(3));
    expectClose(atOnce[0]!.standard, tilt / 60, { relative: 1e-6 });
    expectClose(atOnce[1]!.standard, tilt / 40, { relative: 1e-6 });
    // Lifted and put down again, it sits afresh, with a zero of its own.
    const twice = [...grid('top', () => 0, 'first'), ...grid('top', () => 50, 'second')];
    const anew = tapersOf('top', solved(twice, kit));
    expectClose(anew[0]!.standard, tilt / 60 / Math.SQRT2, { relative: 1e-6 });
    expect(Math.abs(anew[0]!.value)).toBeLessThan(1e-9);
  });

  it('has the doubt of the indicator shared out over the places: σ/√Σx²', () => {
    const kit = { ...EXACT, indicatorResolution: Math.sqrt(12) };
    const [alongX, alongY] = tapersOf(
      'top',
      solved(
        grid('top', () => 0),
        kit,
      ),
    );
    // The grid has six places off the middle, 24 mm away along X and 16 mm along Y.
    expectClose(alongX!.standard, 1 / Math.sqrt(6 * 24 ** 2), { relative: 1e-6 });
    expectClose(alongY!.standard, 1 / Math.sqrt(6 * 16 ** 2), { relative: 1e-6 });
  });
});

describe('a map of a face on jacks', () => {
  it('says nothing of the angles, by itself or beside others', () => {
    const map = grid('top', ({ x }) => x).map(
      (one): FaceMapReading => ({ ...one, kind: 'face map', placing: 'jacks' }),
    );
    expect(equationsOf(map, BLOCK, DEFAULT_KIT)).toEqual([]);
    const top = grid('top', ({ x }) => 0.01 * x);
    expect(equationsOf([...map, ...top], BLOCK, DEFAULT_KIT)).toEqual(
      equationsOf(top, BLOCK, DEFAULT_KIT),
    );
  });
});
