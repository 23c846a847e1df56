import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { FACES, type Face, oppositeFace } from '../../../src/core/part/faces';
import { outlineOf } from '../../../src/widgets/drawings/turning-block/block-points';
import { drawnBlock } from '../../../src/widgets/drawings/turning-block/drawn-block';
import { onSheet, sheetFor } from '../../../src/widgets/drawings/turning-block/sheet';
import { cross, dot, middleOf } from '../../../src/widgets/drawings/turning-block/space';
import {
  BELOW,
  betweenViews,
  eyeOf,
  facesInSight,
  MOST_TILT,
  movedOn,
  STANDING,
  toNextStop,
} from '../../../src/widgets/drawings/turning-block/view';
import { anyBlock, anyView, SIZES } from './blocks';

const SQUARE = drawnBlock({ size: SIZES.block });

/** Twice the area of an outline on the sheet, where y runs down: positive where it runs against the clock. */
function turnsOnSheet(points: readonly { x: number; y: number }[]): number {
  return points.reduce((sum, { x, y }, index) => {
    const next = points[(index + 1) % points.length]!;
    return sum + (next.x * y - x * next.y);
  }, 0);
}

describe('the eye', () => {
  it('sees a right-handed picture: right × up points at the viewer', () => {
    fc.assert(
      fc.property(anyView, (view) => {
        const { right, up, towards } = eyeOf(view);
        const out = cross(right, up);
        for (const axis of ['x', 'y', 'z'] as const) {
          expect(out[axis]).toBeCloseTo(towards[axis], 12);
        }
        for (const one of [right, up, towards]) expect(dot(one, one)).toBeCloseTo(1, 12);
        expect(dot(right, up)).toBeCloseTo(0, 12);
      }),
      { seed: 1 },
    );
  });

  it.each([
    ['the front', { turn: 0, tilt: 0 }, 'x', 1],
    ['the right', { turn: 90, tilt: 0 }, 'y', 1],
    ['the back', { turn: 180, tilt: 0 }, 'x', -1],
    ['the left', { turn: 270, tilt: 0 }, 'y', -1],
  ] as const)('has the right way round when it looks at %s', (_, view, axis, sign) => {
    const { right, up } = eyeOf(view);
    expect(right[axis]).toBeCloseTo(sign, 12);
    expect(up.z).toBeCloseTo(1, 12);
  });

  it('sees the back of the bottom at the foot of the picture from below, at its head from above', () => {
    expect(eyeOf({ turn: 0, tilt: 30 }).up.y).toBeGreaterThan(0);
    expect(eyeOf({ turn: 0, tilt: -30 }).up.y).toBeLessThan(0);
  });
});

describe('the faces in sight', () => {
  it.each([
    ['as it stands', STANDING, ['front', 'right', 'top']],
    ['from below', { ...STANDING, tilt: BELOW }, ['bottom', 'front', 'right']],
    ['from the left', { turn: 315, tilt: 25 }, ['front', 'left', 'top']],
    ['from behind and below', { turn: 157.5, tilt: -35 }, ['back', 'bottom', 'right']],
    ['from the level', { turn: 45, tilt: 0 }, ['front', 'right']],
    ['straight from the front', { turn: 0, tilt: 0 }, ['front']],
  ] as const)('%s', (_, view, faces) => {
    expect([...facesInSight(SQUARE, eyeOf(view))].sort()).toEqual(faces);
  });

  it('are those whose outline turns the same way on the sheet as seen from outside', () => {
    fc.assert(
      fc.property(anyBlock, anyView, (shown, view) => {
        const block = drawnBlock(shown);
        const [eye, sheet] = [eyeOf(view), sheetFor(block)];
        const seen = facesInSight(block, eye);
        for (const face of FACES) {
          const outline = outlineOf(block, face);
          const [a, b, c] = outline;
          const side = (p: typeof a, q: typeof a) => ({
            x: q!.x - p!.x,
            y: q!.y - p!.y,
            z: q!.z - p!.z,
          });
          // Against the clock from outside, whichever way the corners are listed.
          const listed = Math.sign(dot(cross(side(a, b), side(b, c)), middleOf(outline)));
          const area = listed * turnsOnSheet(outline.map((point) => onSheet(sheet, eye, point)));
          if (Math.abs(area) > 1e-2) expect(seen.includes(face)).toBe(area > 0);
        }
      }),
      { seed: 2 },
    );
  });

  it('are one of each two opposite faces of a square block', () => {
    fc.assert(
      fc.property(anyView, (view) => {
        const seen = facesInSight(SQUARE, eyeOf(view));
        expect(seen.some((face: Face) => seen.includes(oppositeFace(face)))).toBe(false);
      }),
      { seed: 3 },
    );
  });
});

describe('turning', () => {
  it.each([-1080, -360, 360, 720])('by %d degrees comes back to the very same view', (turn) => {
    for (const start of [22.5, 67.5, 307.5, 0]) {
      expect(movedOn({ turn: start, tilt: 25 }, { turn })).toEqual({ turn: start, tilt: 25 });
    }
  });

  it('never tilts beyond its limits', () => {
    expect(movedOn(STANDING, { tilt: 1000 }).tilt).toBe(MOST_TILT);
    expect(movedOn(STANDING, { tilt: -1000 }).tilt).toBe(-MOST_TILT);
  });

  it.each([
    [22.5, 1, 45],
    [22.5, -1, -45],
    [37.5, 1, 30],
    [37.5, -1, -15],
    // A stop just ahead is passed over: the button must be seen to do something.
    [62, 1, 50.5],
  ] as const)('from %d degrees goes on to the next stop', (turn, sign, by) => {
    expect(toNextStop(turn, sign)).toBeCloseTo(by, 9);
  });

  it('goes round by eight presses either way', () => {
    for (const sign of [1, -1] as const) {
      let view = STANDING;
      for (let press = 0; press < 8; press += 1) {
        view = movedOn(view, { turn: toNextStop(view.turn, sign) });
      }
      expect(view.turn).toBeCloseTo(STANDING.turn, 9);
    }
  });

  it('glides the shorter way round', () => {
    const [from, to] = [
      { turn: 350, tilt: 0 },
      { turn: 20, tilt: 10 },
    ];
    expect(betweenViews(from, to, 0)).toEqual(from);
    expect(betweenViews(from, to, 0.5)).toEqual({ turn: 5, tilt: 5 });
    expect(betweenViews(to, from, 0.5)).toEqual({ turn: 5, tilt: 5 });
    expect(betweenViews(from, to, 1)).toEqual(to);
  });
});
