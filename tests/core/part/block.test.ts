import { describe, expect, it } from 'vitest';
import { alongFromBase, cornersOf, depthBehind } from '../../../src/core/part/block';
import {
  areNeighbours,
  areOpposite,
  axesInFace,
  FACES,
  type Face,
  faceTowards,
  oppositeFace,
  outwardNormal,
  pairsAround,
} from '../../../src/core/part/faces';
import { kindOf } from '../../../src/core/part/requirement';
import { BLOCK } from '../support/worked-block';

describe('the faces, seen from the front: X to the right, Y away, Z up', () => {
  it.each([
    ['right', 'x', 1, 'left'],
    ['left', 'x', -1, 'right'],
    ['back', 'y', 1, 'front'],
    ['front', 'y', -1, 'back'],
    ['top', 'z', 1, 'bottom'],
    ['bottom', 'z', -1, 'top'],
  ] as const)('%s looks along %s times %d, away from %s', (face, axis, sign, opposite) => {
    expect(outwardNormal(face)).toEqual({ axis, sign });
    expect(oppositeFace(face)).toBe(opposite);
    expect(faceTowards(axis, sign * 0.3)).toBe(face);
    expect(axesInFace(face)).toEqual(['x', 'y', 'z'].filter((one) => one !== axis));
  });

  it('share an edge unless they are the same or opposite', () => {
    const other = (face: Face) => FACES.filter((one) => areNeighbours(face, one));
    for (const face of FACES) {
      expect(other(face)).toHaveLength(4);
      expect(other(face)).toEqual(pairsAround(face).flat());
      expect(FACES.filter((one) => areOpposite(face, one))).toEqual([oppositeFace(face)]);
    }
  });

  it('has no face looking nowhere', () => {
    expect(() => faceTowards('x', 0)).toThrow(RangeError);
  });
});

describe('a block 60 × 40 × 90', () => {
  it.each([
    ['right', 60],
    ['front', 40],
    ['bottom', 90],
  ] as const)('is behind its %s face %d mm deep', (face, depth) => {
    expect(depthBehind(BLOCK, face)).toBe(depth);
    expect(depthBehind(BLOCK, oppositeFace(face))).toBe(depth);
  });

  it.each([
    ['bottom', 10, -35],
    ['top', 10, 35],
    ['left', 0, -30],
    ['right', 60, -30],
  ] as const)('has what is above its %s by %d mm at %d from the centre', (base, height, along) => {
    expect(alongFromBase(BLOCK, base, height)).toBe(along);
  });

  it('has corners that lie on the three faces that meet there', () => {
    for (const face of FACES) {
      const corners = cornersOf(BLOCK, face);
      expect(new Set(corners.map(({ towards }) => [...towards].sort().join())).size).toBe(4);
      for (const { point, towards } of corners) {
        for (const one of [face, ...towards]) {
          const { axis, sign } = outwardNormal(one);
          expect(point[axis]).toBe((sign * BLOCK.size[axis]) / 2);
        }
      }
    }
  });

  it('has corners that follow one another round the face', () => {
    for (const face of FACES) {
      const corners = cornersOf(BLOCK, face);
      corners.forEach(({ towards }, index) => {
        const next = corners[(index + 1) % 4]!;
        expect(towards.filter((one) => next.towards.includes(one))).toHaveLength(1);
      });
    }
  });
});

it('a drawing asks opposite faces to be parallel and neighbours to be square', () => {
  expect(kindOf({ face: 'top', datum: 'bottom' })).toBe('parallelism');
  expect(kindOf({ face: 'top', datum: 'left' })).toBe('squareness');
});
