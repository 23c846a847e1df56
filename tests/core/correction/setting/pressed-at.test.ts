import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { pressPoint } from '../../../../src/core/correction/press-point';
import { atCorners } from '../../../../src/core/correction/removal';
import { type Contact, pressedAt } from '../../../../src/core/correction/setting/pressed-at';
import { axesInFace, FACES } from '../../../../src/core/part/faces';
import { ECCENTRIC_LOADS } from '../../reference/eccentric-load';
import { expectClose } from '../../support/close';
import { removal } from '../../support/removals';
import { BLOCK } from '../../support/worked-block';
import { PARTIAL_CONTACT } from './reference/partial-contact';

/** The top of a block, as a footing B × L. */
function footing({ B, L }: { readonly B: number; readonly L: number }) {
  return { size: { x: B, y: L, z: 1 } };
}

/** Pressures at the four corners of a contact, by the neighbours that meet there. */
function pressureAt(contact: Contact, ...sides: readonly string[]): number {
  return contact.corners.find(({ towards }) =>
    sides.every((side) => towards.some((o) => o === side)),
  )!.pressure;
}

/** Force, and moments about the point that is pressed, by midpoints of a fine grid over the face. */
function balance(contact: Contact, off: readonly [number, number]): readonly number[] {
  const steps = 400;
  const [a, b, c] = planeOf(contact);
  let [force, alongU, alongV] = [0, 0, 0];
  for (let i = 0; i < steps; i += 1) {
    for (let j = 0; j < steps; j += 1) {
      const [u, v] = [(i + 0.5) / steps - 0.5, (j + 0.5) / steps - 0.5];
      const pressure = Math.max(0, a + b * u + c * v) / steps ** 2;
      force += pressure;
      alongU += pressure * (u - off[0]);
      alongV += pressure * (v - off[1]);
    }
  }
  return [force, alongU, alongV];
}

/** The linear pressure of a contact, from the corners of the part that lies down: 0 where it lifts. */
function planeOf(contact: Contact): readonly [number, number, number] {
  const [u, v] = ['x', 'y'] as const;
  const points = contact.lying.map((point) => {
    const [a, b] = [point[u]! / BLOCK.size.x, point[v]! / BLOCK.size.y];
    const isCorner = Math.abs(Math.abs(a) - 0.5) < 1e-9 && Math.abs(Math.abs(b) - 0.5) < 1e-9;
    const sides = [a > 0 ? 'right' : 'left', b > 0 ? 'back' : 'front'];
    return { a, b, pressure: isCorner ? pressureAt(contact, ...sides) : 0 };
  });
  return planeThroughThree(points);
}

/** The plane through the first two points and the one that stands farthest off their line. */
function planeThroughThree(
  points: readonly { readonly a: number; readonly b: number; readonly pressure: number }[],
): readonly [number, number, number] {
  const [p, q] = points as [(typeof points)[0], (typeof points)[0]];
  const cross = (r: (typeof points)[0]) => (q.a - p.a) * (r.b - p.b) - (q.b - p.b) * (r.a - p.a);
  const r = points.toSorted((one, other) => Math.abs(cross(other)) - Math.abs(cross(one)))[0]!;
  const area = cross(r);
  const [dq, dr] = [q.pressure - p.pressure, r.pressure - p.pressure];
  const slopeU = (dq * (r.b - p.b) - dr * (q.b - p.b)) / area;
  const slopeV = (dr * (q.a - p.a) - dq * (r.a - p.a)) / area;
  return [p.pressure - slopeU * p.a - slopeV * p.b, slopeU, slopeV];
}

describe('a face that is pressed', () => {
  it.each(ECCENTRIC_LOADS)(
    'within the kern, $e off the middle, lies down from $low to $high',
    (load) => {
      const { P, B, L, e, high, low } = load;
      const contact = pressedAt(footing(load), 'top', { x: -e });
      const mean = P / (B * L);
      expectClose(contact.greatest * mean, high, { relative: 1e-12 });
      expectClose(pressureAt(contact, 'left', 'front') * mean, high, { relative: 1e-12 });
      expectClose(pressureAt(contact, 'right', 'back') * mean, low, { absolute: 1e-9 });
      expectClose(contact.share, 1);
    },
  );

  it('beyond the kern lifts, as the footing does', () => {
    const { P, B, L, e, greatest, contact: length } = PARTIAL_CONTACT;
    const contact = pressedAt(footing(PARTIAL_CONTACT), 'top', { x: e });
    expectClose((contact.greatest * P) / (B * L), greatest, { relative: 1e-6 });
    expectClose(contact.share * B, length, { relative: 1e-12 });
    expectClose(contact.kernShare, 1.5);
    expect(contact.lying).toHaveLength(4);
    const [low, high] = [Math.min, Math.max].map((of) => of(...contact.lying.map(({ x }) => x!)));
    expectClose(low, B / 2 - length);
    expectClose(high, B / 2);
    expect(pressureAt(contact, 'left', 'front')).toBe(0);
  });

  it('along one axis follows the rule of the footings all the way to the edge', () => {
    for (const e of [0.34, 0.5, 0.8, 0.99, 0.9999]) {
      const contact = pressedAt(footing(PARTIAL_CONTACT), 'top', { x: e });
      // Over the mean P/(B·L): 2B/(3·(B/2 - e)).
      expectClose(contact.greatest, 4 / (3 * (1 - e)), { relative: 1e-9 });
      expectClose(contact.share, (3 * (1 - e)) / 2, { relative: 1e-9 });
    }
  });

  it('near a corner stands on a triangle there: legs four times as long as the way in', () => {
    // Linear pressure q over a triangle with legs a, b has the force q·a·b/6 at a/4, b/4 in.
    fc.assert(
      fc.property(
        fc.double({ min: 0.001, max: 0.25, noNaN: true }),
        fc.double({ min: 0.001, max: 0.25, noNaN: true }),
        (inU, inV) => {
          const point = { x: BLOCK.size.x * (0.5 - inU), y: BLOCK.size.y * (inV - 0.5) };
          const contact = pressedAt(BLOCK, 'top', point);
          expectClose(contact.greatest, 6 / (16 * inU * inV), { relative: 1e-9 });
          expectClose(contact.share, 8 * inU * inV, { relative: 1e-9 });
          expectClose(pressureAt(contact, 'right', 'front'), contact.greatest);
        },
      ),
    );
  });

  it('bears the force where it is pressed, on or off the axes', () => {
    const off = fc.double({ min: -0.45, max: 0.45, noNaN: true });
    fc.assert(
      fc.property(off, off, (u, v) => {
        const contact = pressedAt(BLOCK, 'top', { x: BLOCK.size.x * u, y: BLOCK.size.y * v });
        const [force, alongU, alongV] = balance(contact, [u, v]);
        expectClose(force, 1, { absolute: 2e-3 });
        expectClose(alongU, 0, { absolute: 2e-3 });
        expectClose(alongV, 0, { absolute: 2e-3 });
        expect(contact.share === 1 || contact.kernShare > 1 - 1e-9).toBe(true);
      }),
      { numRuns: 60 },
    );
  });

  it('where lapping is to take a removal presses each corner as much as that takes off', () => {
    fc.assert(
      fc.property(removal, fc.integer({ min: 0, max: 9 }), (least, more) => {
        const one = { ...least, mean: least.mean + more };
        const contact = pressedAt(BLOCK, one.face, pressPoint(BLOCK, one));
        atCorners(BLOCK, one).forEach(({ removal: off }, index) => {
          expectClose(contact.corners[index]!.pressure * one.mean, off, { absolute: 1e-9 });
        });
        expectClose(contact.share, 1, { absolute: 1e-6 });
      }),
    );
  });

  it('in the middle is pressed alike all over', () => {
    for (const face of FACES) {
      const contact = pressedAt(BLOCK, face, {});
      expect(contact.kernShare).toBe(0);
      expectClose(contact.greatest, 1);
      for (const { pressure } of contact.corners) expectClose(pressure, 1);
    }
  });

  it.each(FACES)('outside tips over, and that is refused: %s', (face) => {
    const [u, v] = axesInFace(face);
    for (const off of [BLOCK.size[u] / 2, -BLOCK.size[u], Number.NaN, Number.POSITIVE_INFINITY]) {
      expect(() => pressedAt(BLOCK, face, { [u]: off })).toThrow(RangeError);
    }
    expect(() => pressedAt(BLOCK, face, { [v]: -BLOCK.size[v] / 2 })).toThrow(RangeError);
  });
});
