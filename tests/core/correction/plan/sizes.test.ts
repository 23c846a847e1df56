import { describe, expect, it } from 'vitest';
import { adjust } from '../../../../src/core/adjustment/adjustment';
import { sizesOf } from '../../../../src/core/correction/plan/sizes';
import { equationsOf } from '../../../../src/core/readings/equations-of';
import { DEFAULT_KIT } from '../../../../src/core/readings/kit';
import type { Reading } from '../../../../src/core/readings/reading';
import { expectClose } from '../../support/close';
import { known } from '../../support/known';
import { micrometer, nose } from '../../support/readings';
import { BLOCK, partWith } from '../../support/worked-block';

function sizes(readings: readonly Reading[]) {
  return sizesOf(partWith([]), adjust(equationsOf(readings, BLOCK, DEFAULT_KIT)));
}

describe('the sizes of a part', () => {
  // Over the right face, 40 × 90: 1 µm more per 10 mm going back, 2 µm less per 10 mm going up.
  const shown = (y: number, z: number) => 3 + 0.1 * y - 0.2 * z;
  const places = [
    [-10, -40],
    [15, -30],
    [0, 35],
  ] as const;
  const three = places.map(([y, z]) => micrometer('right', { y, z }, shown(y, z)));

  it('are carried from three readings of a micrometer to the four corners', () => {
    const { x, y, z } = sizes(three);
    expect([y, z]).toEqual([undefined, undefined]);
    expect(x).toHaveLength(4);
    for (const { point, departure } of known(x)) {
      expect([Math.abs(point.x), Math.abs(point.y), Math.abs(point.z)]).toEqual([30, 20, 45]);
      expectClose(departure, shown(point.y, point.z), { absolute: 1e-9 });
    }
  });

  it('come out the same whichever of the two faces the micrometer is laid to', () => {
    const left = places.map(([y, z]) => micrometer('left', { y, z }, shown(y, z)));
    const [one, other] = [known(sizes(three).x), known(sizes(left).x)];
    one.forEach((corner, index) => {
      expect(other[index]?.towards).toEqual(corner.towards);
      expectClose(other[index]?.departure, corner.departure, { absolute: 1e-9 });
    });
  });

  it('are the less certain the further they are carried', () => {
    const near = [
      [-20, -45],
      [20, -45],
      [-20, 45],
      [20, 45],
    ].map(([y, z]) => micrometer('right', { y: y!, z: z! }, 0));
    const worst = (readings: readonly Reading[]) =>
      Math.max(...known(sizes(readings).x).map(({ standard }) => standard));
    expect(worst(near)).toBeGreaterThan(0);
    expect(worst(three)).toBeGreaterThan(1.5 * worst(near));
    for (const { degreesOfFreedom } of known(sizes(near).x)) {
      expect(degreesOfFreedom).toBeGreaterThanOrEqual(1);
    }
  });

  it('are not fixed by two places, by three on a line, or by an indicator', () => {
    const onLine = [-40, 0, 40].map((z) => micrometer('right', { z }, 1));
    expect(sizes(three.slice(0, 2)).x).toBeUndefined();
    expect(sizes(onLine).x).toBeUndefined();
    expect(sizes([nose('right', 3), nose('left', 4)])).toEqual({
      ...{ x: undefined, y: undefined, z: undefined },
    });
    expect(sizes([])).toEqual({ x: undefined, y: undefined, z: undefined });
  });
});
