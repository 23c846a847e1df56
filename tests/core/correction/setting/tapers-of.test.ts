import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { adjust } from '../../../../src/core/adjustment/adjustment';
import { shimsFor } from '../../../../src/core/correction/setting/shims';
import { tapersOf } from '../../../../src/core/correction/setting/tapers-of';
import { taper } from '../../../../src/core/part/face-errors';
import {
  axesInFace,
  FACES,
  type Face,
  faceTowards,
  oppositeFace,
} from '../../../../src/core/part/faces';
import { equationsOf } from '../../../../src/core/readings/equations-of';
import { DEFAULT_KIT } from '../../../../src/core/readings/kit';
import type { Reading } from '../../../../src/core/readings/reading';
import { expectClose } from '../../support/close';
import { randomBlock } from '../../support/exact-block';
import { exactThickness } from '../../support/exact-inspection';
import { someReadings } from '../../support/inspections';
import { known } from '../../support/known';
import { manyRandoms } from '../../support/random';
import { assumedParallel, micrometer, nose } from '../../support/readings';
import { isInRowSpace } from '../../support/row-space';
import { BLOCK } from '../../support/worked-block';
import { trueTapers } from './support/exact-setting';

const equationsFrom = (readings: readonly Reading[]) => equationsOf(readings, BLOCK, DEFAULT_KIT);

function tapersBy(face: Face, readings: readonly Reading[]) {
  return tapersOf(face, adjust(equationsFrom(readings)));
}

/** The thickness over the right, µm off the drawing, by how far up it was read, in the middle. */
function upTheMiddle(departures: Readonly<Record<number, number>>): readonly Reading[] {
  return Object.entries(departures).map(([z, departure]) =>
    micrometer('right', { z: Number(z) }, departure),
  );
}

describe('the tapers behind a face', () => {
  it('are how the thickness grows along each axis: 8 µm over 80 mm up, -3 µm over 30 mm back', () => {
    const places = [
      micrometer('right', { y: -15, z: -40 }, 2),
      micrometer('right', { y: -15, z: 40 }, 10),
      micrometer('right', { y: 15, z: -40 }, -1),
    ];
    const tapers = tapersBy('right', places);
    expect(Object.keys(tapers)).toEqual(['y', 'z']);
    expectClose(tapers.y, -0.1);
    expectClose(tapers.z, 0.1);
  });

  it('are left out along an axis that the readings say nothing of', () => {
    const tapers = tapersBy('right', upTheMiddle({ '-40': 2, 40: 10 }));
    expect(Object.keys(tapers)).toEqual(['z']);
    expectClose(tapers.z, 0.1);
  });

  it('are none at one place, of other faces, or without any reading', () => {
    expect(tapersBy('right', upTheMiddle({ 0: 2 }))).toEqual({});
    expect(tapersBy('top', upTheMiddle({ '-40': 2, 40: 10 }))).toEqual({});
    expect(tapersBy('right', [])).toEqual({});
  });

  it('are not fixed by a swing alone, but are 0 by the word that the faces are parallel', () => {
    const swing = [nose('right', 34), nose('left', 31)];
    expect(tapersBy('right', swing)).toEqual({});
    const tapers = tapersBy('right', [...swing, assumedParallel('right')]);
    expectClose(tapers.y, 0);
    expectClose(tapers.z, 0);
    expect(tapersBy('bottom', [...swing, assumedParallel('right')])).toEqual({});
  });

  it('follow from the four corners of a section, with no micrometer', () => {
    // The four sum to 4 · zero = 128: out of square by 5, -2, -3 and 0, all over 74 mm.
    const corners = [
      nose('right', 37),
      nose('left', 30),
      nose('right', 29, { base: 'top' }),
      nose('left', 32, { base: 'top' }),
    ];
    const [width, height] = (['right', 'top'] as const).map((face) => tapersBy(face, corners));
    // Right and left lean apart by 5 - 2 going up; top and bottom by 0 - 2 going right.
    expect([width, height].map((tapers) => Object.keys(known(tapers)))).toEqual([['z'], ['x']]);
    expectClose(width?.z, 3 / 74);
    expectClose(height?.x, -2 / 74);
  });

  it('are those of an exact block, but for the third order of its slopes', () => {
    const worst = (slope: number) => {
      const errors = manyRandoms(40).flatMap((random) => {
        const block = randomBlock(random, BLOCK.size, slope, 200 * slope);
        return FACES.flatMap((face) => {
          const found = tapersBy(face, exactThickness(block, face));
          const real = trueTapers(block, face);
          return axesInFace(face).map((axis) => Math.abs(known(found[axis]) - known(real[axis])));
        });
      });
      return Math.max(...errors);
    };
    // The anvil sits flat on a face that slopes: cosines, s²·10⁻⁶ of a taper of s, a few times over.
    const [all, tenth] = [worst(0.1), worst(0.01)];
    expect(all).toBeLessThan(10 * 0.1 ** 3 * 1e-6);
    expect(all / tenth).toBeGreaterThan(900);
    expect(all / tenth).toBeLessThan(1100);
  });

  it('are there exactly where the readings fix them, the same behind both faces', () => {
    const seen = new Map<number, number>();
    fc.assert(
      fc.property(someReadings, fc.constantFrom(...FACES), (readings, face) => {
        const equations = equationsFrom(readings);
        const adjustment = adjust(equations);
        const tapers = tapersOf(face, adjustment);
        const rows = equations.map(({ form }) => form);
        const fixed = axesInFace(face).filter((axis) =>
          isInRowSpace(taper(face, faceTowards(axis, 1)), rows),
        );
        expect(Object.keys(tapers)).toEqual(fixed);
        const behind = tapersOf(oppositeFace(face), adjustment);
        expect(Object.keys(behind)).toEqual(fixed);
        for (const axis of fixed) expectClose(behind[axis], tapers[axis]!, { absolute: 1e-9 });
        seen.set(fixed.length, (seen.get(fixed.length) ?? 0) + 1);
      }),
      { seed: 20240305, numRuns: 400 },
    );
    // None, one and both are all among them.
    expect([...seen.keys()].sort()).toEqual([0, 1, 2]);
  });

  it('are what shims are cut from', () => {
    // Thinner by 5 µm over 50 mm to the right, thicker by 3 µm over 30 mm to the back.
    const places = [
      micrometer('top', { x: -25, y: -15 }, 0),
      micrometer('top', { x: 25, y: -15 }, -5),
      micrometer('top', { x: -25, y: 15 }, 3),
    ];
    const removal = { face: 'top', mean: 7, slopes: { x: -0.2, y: 0.05 } } as const;
    const { edges } = known(shimsFor(BLOCK, removal, tapersBy('top', places)));
    // (0.2 - 0.1) · 60 and (0.1 - 0.05) · 40 µm.
    expect(edges.map(({ under }) => under)).toEqual(['left', 'front']);
    expectClose(edges[0]?.thickness, 6, { absolute: 1e-9 });
    expectClose(edges[1]?.thickness, 2, { absolute: 1e-9 });
    const without = tapersBy('top', places.slice(0, 2));
    expect(shimsFor(BLOCK, removal, without)).toBeUndefined();
  });
});
