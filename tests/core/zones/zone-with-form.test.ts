import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Block } from '../../../src/core/part/block';
import { DEFAULT_KIT, type Kit } from '../../../src/core/readings/kit';
import type { Reading } from '../../../src/core/readings/reading';
import {
  type FormPoint,
  formPointsOf,
  formSpansOf,
  widthWithForm,
} from '../../../src/core/zones/zone-with-form';

/* Values are worked by hand in the comments; there is no published table of such widths. */

const BLOCK: Block = { size: { x: 60, y: 40, z: 90 } };
const SQUARE = { face: 'right', datum: 'bottom' } as const;
const PARALLEL = { face: 'top', datum: 'bottom' } as const;

function point(shares: readonly number[], residual: number): FormPoint {
  return { shares, residual, group: 'A', standard: 0.4 };
}

describe('the width of a zone with form', () => {
  const part = fc.double({ min: -100, max: 100, noNaN: true });
  const share = fc.double({ min: -0.5, max: 0.5, noNaN: true });
  const points = fc.array(
    fc.tuple(share, share, part).map(([u, v, residual]) => point([u, v], residual)),
    { maxLength: 8 },
  );

  it('without points is Σ|part|', () => {
    fc.assert(
      fc.property(fc.array(part, { minLength: 1, maxLength: 2 }), (parts) => {
        const sum = parts.reduce((total, one) => total + Math.abs(one), 0);
        expect(widthWithForm(parts, [])).toBeCloseTo(sum, 10);
      }),
    );
  });

  it.each([
    // Corners ±2; 4 × 0 + 3 stands 1 above the upper one: 3 - -2.
    ['a crown in the middle', [4], [point([0], 3)], 5],
    // 4 × 0.5 + 1 = 3 and 4 × -0.5 - 0.5 = -2.5.
    ['form that adds to the lean', [4], [point([0.5], 1), point([-0.5], -0.5)], 5.5],
    // 4 × 0.25 - 1 = 0 and 4 × -0.25 + 1 = 0: within the corners.
    ['form within the corners', [4], [point([0.25], -1), point([-0.25], 1)], 4],
    // Leaning the other way: -4 × -0.25 + 1.5 = 2.5.
    ['the sign of the lean', [-4], [point([-0.25], 1.5)], 4.5],
    // Corners ±3; 4 × 0.5 - 2 × -0.5 + 1 = 4; -2 × 0.5 + 4 × -0.5 - 2 = -5.
    ['two parts', [4, -2], [point([0.5, -0.5], 1), point([-0.5, 0.5], -2)], 9],
    ['a level face, form alone', [0, 0], [point([0.1, 0.2], 2), point([0, 0], -1)], 3],
  ])('%s', (_, parts, read, width) => {
    expect(widthWithForm(parts, read)).toBeCloseTo(width, 12);
  });

  it('is never less for a further point, nor other for the block turned over', () => {
    fc.assert(
      fc.property(part, part, points, (p, q, read) => {
        const width = widthWithForm([p, q], read);
        expect(width).toBeGreaterThanOrEqual(widthWithForm([p, q], read.slice(1)));
        const turned = read.map(({ shares, residual }) => point(shares, -residual));
        expect(widthWithForm([-p, -q], turned)).toBeCloseTo(width, 9);
      }),
    );
  });
});

/** A traverse of the right side standing on the bottom: value by height. */
function traverse(
  placing: string,
  rows: readonly (readonly [number, number])[],
): readonly Reading[] {
  return rows.map(([height, value]) => ({
    kind: 'column',
    id: `${placing} ${height}`,
    column: 'one',
    placing,
    face: 'right',
    base: 'bottom',
    height,
    value,
  }));
}

/** A map of the thickness between top and bottom: x, y, value. */
function map(
  kind: 'over the top' | 'micrometer',
  face: 'top' | 'bottom',
  rows: readonly (readonly [number, number, number])[],
): readonly Reading[] {
  return rows.map(([x, y, value], index) => {
    const at = { id: `${kind} ${index}`, face, point: { x, y, z: 45 } };
    return kind === 'micrometer'
      ? { kind, ...at, departure: value }
      : { kind, ...at, placing: 'map', value };
  });
}

/** Plane 7 + 0.1·x, and on it a twist of ±1: what is left after the least-squares plane. */
const TWIST = [
  [-25, -15, 5.5],
  [25, -15, 8.5],
  [-25, 15, 3.5],
  [25, 15, 10.5],
] as const;

/** Instruments so good that what they leave is all form. */
const SHARP: Kit = {
  ...DEFAULT_KIT,
  indicatorResolution: 1e-9,
  indicatorError: 0,
  micrometerResolution: 1e-9,
  micrometerError: 0,
};

describe('the points that show form', () => {
  it('of a traverse are what is left after its own line, more material being plus', () => {
    // 0, 3, 0 at 10, 45, 80: the line is level at 1; 45 is the middle of 90, 80 is 35/90 above it.
    const readings = traverse('A', [
      [10, 0],
      [45, 3],
      [80, 0],
    ]);
    const points = formPointsOf(SQUARE, readings, BLOCK, SHARP);
    expect(points.map(({ residual }) => residual)).toEqual([-1, 2, -1].map(near));
    expect(points.map(({ shares }) => shares)).toEqual([[near(-35 / 90)], [0], [near(35 / 90)]]);
  });

  it('hold each placing by itself, however it sat', () => {
    const heights = [10, 30, 50, 70] as const;
    const placed = (placing: string, zero: number, sit: number) =>
      traverse(
        placing,
        heights.map((height, index) => [height, zero + sit * height + [1, -1, -1, 1][index]!]),
      );
    const readings = [...placed('A', 5, 0.1), ...placed('B', -20, -0.3)];
    const points = formPointsOf(SQUARE, readings, BLOCK, SHARP);
    expect(points.map(({ residual }) => residual)).toEqual([1, -1, -1, 1, 1, -1, -1, 1].map(near));
    expect(new Set(points.map(({ group }) => group)).size).toBe(2);
  });

  it('take a lever at an angle for what it moved', () => {
    const bowed = traverse('A', [
      [10, 0],
      [45, 3],
      [80, 0],
    ]);
    const kit: Kit = { ...SHARP, leverAngle: 60 };
    const [, middle] = formPointsOf(SQUARE, bowed, BLOCK, kit);
    expect(middle?.residual).toBeCloseTo(1, 12); // 2 × cos 60°
  });

  it.each([
    ['two heights', traverse('A', [[10, 0], [80, 3]])], // biome-ignore format: one row each
    ['two heights, one of them twice', traverse('A', [[10, 0], [10, 1], [80, 3]])], // biome-ignore format: one row each
    ['three heights in two placings', [...traverse('A', [[10, 0], [80, 3]]), ...traverse('B', [[45, 1]])]], // biome-ignore format: one row each
    ['nothing', []],
  ])('are none for a side with %s', (_, readings) => {
    expect(formPointsOf(SQUARE, readings, BLOCK, SHARP)).toEqual([]);
  });

  it('are none for another face, or another base', () => {
    const readings = traverse('A', [
      [10, 0],
      [45, 3],
      [80, 0],
    ]);
    for (const other of [
      { face: 'left', datum: 'bottom' },
      { face: 'right', datum: 'top' },
      { face: 'bottom', datum: 'right' },
      { face: 'right', datum: 'left' },
    ] as const) {
      expect(formPointsOf(other, readings, BLOCK, SHARP)).toEqual([]);
    }
  });

  it.each(['over the top', 'micrometer'] as const)(
    'of a map by %s are what is left after its plane',
    (kind) => {
      // An indicator over the bottom shows the form of the bottom, which is the datum here.
      for (const face of kind === 'micrometer'
        ? (['top', 'bottom'] as const)
        : (['top'] as const)) {
        const points = formPointsOf(PARALLEL, map(kind, face, TWIST), BLOCK, SHARP);
        expect(points.map(({ residual }) => residual)).toEqual([1, -1, -1, 1].map(near));
        expect(points[1]?.shares).toEqual([near(25 / 60), near(-15 / 40)]);
      }
    },
  );

  it('put the readings back together with the plane', () => {
    const points = formPointsOf(PARALLEL, map('over the top', 'top', TWIST), BLOCK, SHARP);
    // 0.1 µm/mm over 60 mm; the zero of 7 is the stand's.
    const heights = points.map(({ shares, residual }) => 6 * shares[0]! + residual);
    expect(heights).toEqual(TWIST.map(([, , value]) => near(value - 7)));
  });

  it.each([
    ['three places', TWIST.slice(0, 3)],
    ['four readings at three places', [...TWIST.slice(0, 3), [-25, -15, 6] as const]],
    ['four places on one line', [1, 2, 3, 4].map((k) => [k * 10 - 25, k * 6 - 15, k % 2] as const)],
  ])('are none for a map of %s', (_, rows) => {
    const readings = map('over the top', 'top', rows);
    expect(formPointsOf(PARALLEL, readings, BLOCK, SHARP)).toEqual([]);
  });

  it('span what they span', () => {
    const points = formPointsOf(PARALLEL, map('micrometer', 'top', TWIST), BLOCK, SHARP);
    expect(formSpansOf(PARALLEL, points, BLOCK)).toEqual([
      { read: near(50), face: 60 },
      { read: near(30), face: 40 },
    ]);
    expect(formSpansOf(SQUARE, [point([-0.4], 1), point([0.3], 1)], BLOCK)).toEqual([
      { read: near(63), face: 90 },
    ]);
    expect(formSpansOf(SQUARE, [], BLOCK)).toEqual([]);
  });
});

/** Right but for rounding. */
function near(value: number): unknown {
  return expect.closeTo(value, 10);
}
