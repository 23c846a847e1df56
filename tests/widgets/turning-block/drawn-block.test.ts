import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { cornersOf, type Triple } from '../../../src/core/part/block';
import { AXES, FACES, outwardNormal } from '../../../src/core/part/faces';
import {
  edgeOf,
  outlineOf,
  pointOn,
  squareOutlineOf,
} from '../../../src/widgets/drawings/turning-block/block-points';
import { drawnBlock } from '../../../src/widgets/drawings/turning-block/drawn-block';
import { isUnknown } from '../../../src/widgets/drawings/turning-block/shown-block';
import { outOf } from '../../../src/widgets/drawings/turning-block/space';
import { sideOf } from '../../../src/widgets/drawings/turning-block/wedge';
import { anyBlock, obtuseBlock, removalOn, SIZES } from './blocks';

const OBTUSE = drawnBlock(obtuseBlock());
const NEAR = 1e-7;

function expectNear(point: Triple, x: number, y: number, z: number): void {
  expect(point.x).toBeCloseTo(x, 9);
  expect(point.y).toBeCloseTo(y, 9);
  expect(point.z).toBeCloseTo(z, 9);
}

describe('the drawn block', () => {
  it('leans by hand: 0.02 µm/mm over 45 mm, 5000 times as large, is 4.5 mm at the top', () => {
    const [low, high] = edgeOf(OBTUSE, 'right', 'front').toSorted((a, b) => a.z - b.z);
    expectNear(low!, 25.5, -20, -45);
    expectNear(high!, 34.5, -20, 45);
  });

  it('is the block of the drawing where nothing is known', () => {
    const plain = drawnBlock({ size: SIZES.block });
    for (const face of FACES) {
      expect(isUnknown(plain.shown, face)).toBe(true);
      expect(outlineOf(plain, face)).toEqual(squareOutlineOf(plain, face));
    }
    expect(plain.leans).toBe(false);
    expect(plain.factor).toBeUndefined();
  });

  it('draws a face plain only where none of its slopes is known', () => {
    expect(FACES.filter((face) => !isUnknown(OBTUSE.shown, face))).toEqual(['right', 'bottom']);
    expect(isUnknown({ size: SIZES.block, slopes: { right: { z: undefined } } }, 'right')).toBe(
      true,
    );
  });

  it('has every corner of a face on that face, and behind or on all others', () => {
    fc.assert(
      fc.property(anyBlock, (shown) => {
        const block = drawnBlock(shown);
        const unit = Math.max(...AXES.map((axis) => block.sizes[axis]));
        for (const face of FACES) {
          for (const corner of outlineOf(block, face)) {
            expect(Math.abs(outOf(block.faces[face], corner))).toBeLessThan(NEAR * unit);
            for (const other of FACES) {
              expect(outOf(block.faces[other], corner)).toBeLessThan(NEAR * unit);
            }
          }
        }
      }),
      { seed: 7 },
    );
  });

  it('has the press point on its face, as far from the middle as it is on the part', () => {
    // Pressed a sixth of the 60 mm towards the left: a wedge that feathers to nothing.
    const point = pointOn(OBTUSE, 'bottom', OBTUSE.shown.removals![0]!.press!);
    expectNear(point, -10, 0, -45);
  });
});

describe('the wedge', () => {
  it('lies out of the finished plane by what comes off at each corner', () => {
    fc.assert(
      fc.property(anyBlock, (shown) => {
        const block = drawnBlock(shown);
        const [{ finished, shown: removal }] = block.removals as [(typeof block.removals)[0]];
        const corners = cornersOf({ size: block.sizes }, removal.face);
        for (const { point, towards } of corners) {
          const depth = outOf(finished, point) - outOf(block.faces[removal.face], point);
          const expected = removal.corners.find((corner) =>
            corner.towards.every((face) => towards.includes(face)),
          )!.removal;
          const drawn = (expected * block.factor!) / 1000;
          expect(Math.abs(depth - drawn)).toBeLessThan(NEAR * (1 + drawn));
        }
      }),
      { seed: 8 },
    );
  });

  it('has its sides between the finished plane and the faces of the block', () => {
    fc.assert(
      fc.property(anyBlock, (shown) => {
        const block = drawnBlock(shown);
        const unit = Math.max(...AXES.map((axis) => block.sizes[axis]));
        for (const removal of block.removals) {
          const sides = FACES.filter((face) => face !== removal.shown.face).map((face) =>
            sideOf(block, removal, face),
          );
          expect(sides.some((side) => side.length >= 3)).toBe(true);
          for (const point of sides.flat()) {
            expect(outOf(removal.finished, point)).toBeGreaterThan(-NEAR * unit);
            for (const face of FACES) {
              expect(outOf(block.faces[face], point)).toBeLessThan(NEAR * unit);
            }
          }
        }
      }),
      { seed: 9 },
    );
  });

  it('by hand: the right obtuse to the bottom, 1.2 µm come off at the left, drawn 6 mm high', () => {
    const side = sideOf(OBTUSE, OBTUSE.removals[0]!, 'left');
    expect(Math.max(...side.map(({ z }) => z)) + 45).toBeCloseTo(6, 9);
    // On the front it feathers to nothing at the right, but for the lean of that edge.
    const front = sideOf(OBTUSE, OBTUSE.removals[0]!, 'front');
    const right = front.filter(({ x }) => x > 20);
    expect(right.length).toBeGreaterThan(0);
    for (const { z } of right) expect(z + 45).toBeLessThan(0.5);
    expect(sideOf(OBTUSE, OBTUSE.removals[0]!, 'top')).toEqual([]);
  });

  it('leaves a face square to the one that leans, as nearly as errors drawn large can be', () => {
    const { normal } = OBTUSE.removals[0]!.finished;
    const right = OBTUSE.faces.right.normal;
    expect(normal.x * right.x + normal.y * right.y + normal.z * right.z).toBeCloseTo(0, 9);
  });

  it('is as thick all over where the cut is level', () => {
    const corners = removalOn(SIZES.block, 'top', { x: 0.01 }).corners;
    const level = corners.map((corner) => ({ ...corner, removal: 3 }));
    const block = drawnBlock({
      size: SIZES.block,
      removals: [{ face: 'top', corners: level, highSide: [], highText: '' }],
    });
    const [removal] = block.removals;
    expect(removal!.growth).toEqual({ x: 0, y: 0, z: 0 });
    for (const face of FACES.filter((one) => outwardNormal(one).axis !== 'z')) {
      const side = sideOf(block, removal!, face);
      expect(Math.min(...side.map(({ z }) => z))).toBeCloseTo(45 - (3 * block.factor!) / 1000, 9);
    }
  });
});
