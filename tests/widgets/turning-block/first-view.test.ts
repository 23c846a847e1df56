import { describe, expect, it } from 'vitest';
import { FACES } from '../../../src/core/part/faces';
import { drawnBlock } from '../../../src/widgets/drawings/turning-block/drawn-block';
import { firstView } from '../../../src/widgets/drawings/turning-block/first-view';
import {
  eyeOf,
  facesInSight,
  facing,
  STANDING,
} from '../../../src/widgets/drawings/turning-block/view';
import { obtuseBlock, removalOn, SIZES } from './blocks';

const SLOPES = {
  right: { z: 0.02 },
  left: { y: -0.02 },
  back: { x: 0.01, z: 0.02 },
  front: { z: -0.02 },
  top: { x: -0.02, y: 0.01 },
  bottom: { y: 0.02 },
} as const;

describe('the first view', () => {
  const cases = FACES.flatMap((face) =>
    Object.entries(SIZES).map(([name, size]) => [name, face, size] as const),
  );
  it.each(cases)(
    'of the %s shows the %s where that is worked, and its high side',
    (_, face, size) => {
      const removal = removalOn(size, face, SLOPES[face]);
      const block = drawnBlock({ size, removals: [removal] });
      const eye = eyeOf(firstView(block));
      expect(facing(block, face, eye)).toBeGreaterThan(0.4);
      for (const side of removal.highSide) expect(facesInSight(block, eye)).toContain(side);
    },
  );

  it('shows both faces where two are worked', () => {
    const removals = [
      removalOn(SIZES.block, 'left', { z: 0.02 }),
      removalOn(SIZES.block, 'bottom', { x: 0.02 }),
    ];
    const block = drawnBlock({ size: SIZES.block, removals });
    const seen = facesInSight(block, eyeOf(firstView(block)));
    expect(seen).toContain('left');
    expect(seen).toContain('bottom');
  });

  it('is from below for the bottom, from the side that is high', () => {
    const { turn, tilt } = firstView(drawnBlock(obtuseBlock()));
    expect(tilt).toBeLessThan(0);
    expect(turn).toBeGreaterThan(180);
  });

  it('is that of a standing block where nothing is worked', () => {
    expect(firstView(drawnBlock({ size: SIZES.bar }))).toEqual(STANDING);
  });
});
