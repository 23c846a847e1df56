import { describe, expect, it } from 'vitest';
import { AXES, FACES, type Face, oppositeFace, outwardNormal } from '../../src/core/part/faces';
import {
  type Direction,
  type FaceView,
  faceView,
  seenFrom,
} from '../../src/widgets/drawings/face-view';

type Vector = readonly [number, number, number];

function vectorOf({ axis, sign }: Direction): Vector {
  const [x = 0, y = 0, z = 0] = AXES.map((one) => (one === axis ? sign : 0));
  return [x, y, z];
}

function cross(a: Vector, b: Vector): Vector {
  return [a[1] * b[2] - a[2] * b[1], a[2] * b[0] - a[0] * b[2], a[0] * b[1] - a[1] * b[0]];
}

const negative = ([x, y, z]: Vector): Vector => [0 - x, 0 - y, 0 - z];

/** The two ways to see each face, with the direction from the block to the viewer. */
const VIEWS = FACES.flatMap((face): [string, Face, FaceView, Vector][] => {
  const { outside, through } = faceView(face);
  return [
    [`${face} from outside`, face, outside, vectorOf(outwardNormal(face))],
    [`${face} through the block`, face, through, vectorOf(outwardNormal(oppositeFace(face)))],
  ];
});

describe('the view of a face', () => {
  it.each(VIEWS)('%s: right is up × the direction to the viewer', (_, __, view, viewer) => {
    expect(vectorOf(view.right)).toEqual(cross(vectorOf(view.up), viewer).map((v) => v + 0));
  });

  it.each(VIEWS)('%s: up is the top of the block, or its back', (_, face, view) => {
    const flat = face === 'top' || face === 'bottom';
    expect(view.edges.top).toBe(flat ? 'back' : 'top');
    expect(view.up).toEqual(outwardNormal(view.edges.top));
  });

  it.each(VIEWS)('%s: the neighbours stand where their normals point', (_, __, view) => {
    const { top, bottom, left, right } = view.edges;
    expect(vectorOf(outwardNormal(top))).toEqual(vectorOf(view.up));
    expect(vectorOf(outwardNormal(bottom))).toEqual(negative(vectorOf(view.up)));
    expect(vectorOf(outwardNormal(right))).toEqual(vectorOf(view.right));
    expect(vectorOf(outwardNormal(left))).toEqual(negative(vectorOf(view.right)));
  });

  it.each([
    ['front', 'outside', 'right'],
    ['back', 'outside', 'left'],
    ['right', 'outside', 'back'],
    ['left', 'outside', 'front'],
    ['top', 'outside', 'right'],
    ['bottom', 'outside', 'left'],
    ['front', 'through', 'left'],
    ['back', 'through', 'right'],
    ['right', 'through', 'front'],
    ['left', 'through', 'back'],
    ['top', 'through', 'left'],
    ['bottom', 'through', 'right'],
  ] as const)('has at the right of the %s, seen %s, the %s', (face, way, right) => {
    expect(faceView(face)[way].edges.right).toBe(right);
  });

  it.each(FACES)('is mirrored left to right by looking through the %s', (face) => {
    const { outside, through } = faceView(face);
    expect(through.edges.left).toBe(outside.edges.right);
    expect(through.edges.right).toBe(outside.edges.left);
    expect(through.up).toEqual(outside.up);
  });
});

describe('the side that a standing block is seen from', () => {
  it.each([
    ['right', 'bottom', 'front'],
    ['back', 'bottom', 'right'],
    // Stood on its top, its right stays at the right only for one who looks at its back.
    ['right', 'top', 'back'],
    ['back', 'top', 'left'],
    ['top', 'right', 'front'],
    ['top', 'left', 'back'],
  ] as const)('%s at the right, on the %s: the %s', (right, base, face) => {
    expect(seenFrom(right, base)).toBe(face);
  });

  it('is the one whose neighbours stand as they are drawn', () => {
    for (const base of FACES) {
      for (const right of FACES) {
        if (right === base || right === oppositeFace(base)) continue;
        const { outside } = faceView(seenFrom(right, base));
        const [u, r] = [
          vectorOf(outwardNormal(oppositeFace(base))),
          vectorOf(outwardNormal(right)),
        ];
        // The same turn from right to up as in the view of that face from outside.
        expect(cross(r, u).map((n) => n + 0)).toEqual(
          cross(vectorOf(outside.right), vectorOf(outside.up)).map((n) => n + 0),
        );
      }
    }
  });
});
