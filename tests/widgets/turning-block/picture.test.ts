import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { holds, meet } from '../../../src/widgets/drawings/turning-block/convex';
import {
  type DrawnBlock,
  drawnBlock,
} from '../../../src/widgets/drawings/turning-block/drawn-block';
import { pictureOf } from '../../../src/widgets/drawings/turning-block/picture';
import type { ShownBlock } from '../../../src/widgets/drawings/turning-block/shown-block';
import { textsIn } from '../../../src/widgets/drawings/turning-block/texts';
import {
  movedOn,
  STANDING,
  toNextStop,
  type View,
} from '../../../src/widgets/drawings/turning-block/view';
import { anyBlock, anyView, obtuseBlock, removalOn, SIZES } from './blocks';

/** Each size with one face worked, with a corner that is high, and with two faces worked. */
const SHOWN = Object.entries(SIZES).flatMap(([name, size]): [string, ShownBlock][] => [
  [`${name}, bottom`, obtuseBlock(size)],
  [
    `${name}, corner`,
    {
      size,
      removals: [removalOn(size, 'top', { x: 0.015, y: -0.02 })],
      datum: { face: 'front', letter: 'B' },
    },
  ],
  [
    `${name}, two`,
    {
      size,
      slopes: { right: { z: 0.02, y: 0.01 } },
      removals: [removalOn(size, 'right', { z: 0.02 }), removalOn(size, 'back', { x: -0.02 })],
      datum: { face: 'left', letter: 'A' },
    },
  ],
]);

const VIEWS = Array.from({ length: 16 }, (_, index) => index * 22.5).flatMap((turn) =>
  [-45, -20, 25, 45].map((tilt) => ({ turn, tilt })),
);

/** All that is seen of a block, its texts too. */
function drawnIn(block: DrawnBlock, view: View) {
  const { stage, room, ...seen } = pictureOf(block, view);
  return { ...seen, ...textsIn({ stage, room, ...seen }) };
}

const labelsOf = ({ names, highTexts }: ReturnType<typeof drawnIn>) => [...names, ...highTexts];

describe('the picture', () => {
  it.each(SHOWN)('of the %s is the same whichever way a full turn goes', (_, shown) => {
    const block = drawnBlock(shown);
    const start = drawnIn(block, STANDING);
    for (const sign of [1, -1] as const) {
      let view = STANDING;
      for (let press = 0; press < 8; press += 1) {
        view = movedOn(view, { turn: toNextStop(view.turn, sign) });
        if (press < 7) expect(drawnIn(block, view)).not.toEqual(start);
      }
      expect(drawnIn(block, view)).toEqual(start);
      expect(drawnIn(block, movedOn(STANDING, { turn: sign * 360 }))).toEqual(start);
    }
  });

  it('keeps its sheet however the block is turned, and the block on the sheet', () => {
    fc.assert(
      fc.property(anyBlock, anyView, (shown, view) => {
        const block = drawnBlock(shown);
        const { sheet, faces } = drawnIn(block, view);
        expect(sheet).toEqual(drawnIn(block, STANDING).sheet);
        for (const { x, y } of faces.flatMap(({ shape }) => shape)) {
          expect(x).toBeGreaterThan(0);
          expect(x).toBeLessThan(340);
          expect(y).toBeGreaterThan(0);
          expect(y).toBeLessThan(sheet.height);
        }
      }),
      { numRuns: 60, seed: 21 },
    );
  });

  it.each(SHOWN)('of the %s has room for its words in every view', (_, shown) => {
    const block = drawnBlock(shown);
    for (const view of VIEWS) {
      const picture = drawnIn(block, view);
      const { height, centre } = picture.sheet;
      const edges = [
        { x: 0, y: 0 },
        { x: 2 * centre.x, y: 0 },
        { x: 2 * centre.x, y: height },
        { x: 0, y: height },
      ];
      const boxes = [...labelsOf(picture).map(({ box }) => box), picture.datum!.box];
      boxes.forEach((box, index) => {
        expect(holds(edges, box)).toBe(true);
        for (const other of boxes.slice(index + 1)) expect(meet(box, other)).toBe(false);
      });
      const told = picture.highTexts.map(({ lines }) => lines.join(' '));
      expect(told).toEqual(picture.highs.map(({ text }) => text));
    }
  });

  it.each(SHOWN)('of the %s hides no cross hair under a name on a face', (_, shown) => {
    const block = drawnBlock(shown);
    for (const view of VIEWS) {
      const { names, crossHairs } = drawnIn(block, view);
      const onFaces = names.filter(({ leader }) => leader === undefined);
      for (const { ring } of crossHairs) {
        for (const { box } of onFaces) expect(meet(ring, box)).toBe(false);
      }
    }
  });

  it('says where the high edge is behind the block, and shows the cross hair on the face that looks up', () => {
    const block = drawnBlock(obtuseBlock());
    const standing = drawnIn(block, STANDING);
    expect(standing.highs.map(({ text }) => text)).toEqual(['left edge high, behind']);
    expect(standing.wedges.map(({ inSight }) => inSight)).toEqual([false]);
    expect(standing.crossHairs).toHaveLength(1);
    const below = drawnIn(block, { turn: 337.5, tilt: -35 });
    expect(below.highs.map(({ text }) => text)).toEqual(['left edge high']);
    expect(below.wedges.map(({ inSight }) => inSight)).toEqual([true]);
    expect(below.crossHairs).toHaveLength(1);
  });

  it('points the datum the way its face looks: the bottom down, the left to the left', () => {
    const shown = obtuseBlock();
    const down = drawnIn(drawnBlock(shown), STANDING).datum!;
    expect(down.at.y).toBeGreaterThan(down.triangle[0]!.y);
    const block = drawnBlock({ ...shown, datum: { face: 'left', letter: 'B' } });
    const aside = drawnIn(block, STANDING).datum!;
    expect(aside.at.x).toBeLessThan(aside.triangle[0]!.x);
  });
});
