import { describe, expect, it } from 'vitest';
import {
  bowOfWarmth,
  leanWarmth,
  leverDoubt,
  mapDoubt,
  sittingDoubt,
  thicknessWarmth,
} from '../../../src/core/readings/doubts';
import { DEFAULT_KIT, type Kit } from '../../../src/core/readings/kit';
import { localFlatness } from '../../../src/core/statistics/plate-flatness';
import { bowByWarmth, taperByWarmth } from '../../../src/core/statistics/temperature-gradient';
import { expectClose } from '../support/close';
import { CENTRE, BLOCK as COLD } from '../support/worked-block';

/** 60 × 40 × 90 mm of steel, 10⁻⁶ per K. */
const BLOCK = { ...COLD, expansion: 11.5 };
const KIT: Kit = { ...DEFAULT_KIT, warmth: 0.3 };
/** One standard uncertainty of a difference anywhere within ±0.3 K (GUM 4.3.7), K. */
const DIFFERENCE = 0.3 / Math.sqrt(3);

describe('what is certain', () => {
  it('has no row in the budget: a plunger, a block as warm all over, one of unknown material', () => {
    expect(leverDoubt('s', 30, KIT)).toEqual([]);
    for (const [block, kit] of [
      [BLOCK, { ...KIT, warmth: 0 }],
      [COLD, KIT],
    ] as const) {
      expect(leanWarmth('right', 'bottom', 74, block, kit)).toEqual([]);
      expect(thicknessWarmth('right', { ...CENTRE, z: 40 }, block, kit)).toEqual([]);
      expect(bowOfWarmth('right', { ...CENTRE, z: 40 }, block, kit)).toBe(0);
    }
  });
});

describe('the plate', () => {
  const overall = { ...KIT, plateOverall: { flatness: 6, diagonal: 1000 } };
  const plateIn = (rows: ReturnType<typeof mapDoubt>) =>
    rows.find(({ cause }) => cause === 'plate')!.standard;

  it('goes into each reading of a map over the longer side of the face, and whole', () => {
    expectClose(plateIn(mapDoubt('top', BLOCK, KIT)), KIT.plate / Math.sqrt(3));
    // The top is 60 by 40, the right side 40 by 90.
    const over = (length: number) => localFlatness(6, 1000, length) / Math.sqrt(3);
    expectClose(plateIn(mapDoubt('top', BLOCK, overall)), over(60));
    expectClose(plateIn(mapDoubt('right', BLOCK, overall)), over(90));
    expect(mapDoubt('top', BLOCK, KIT).map(({ cause }) => cause)).toEqual([
      'indicator resolution',
      'indicator error',
      'plate',
    ]);
  });

  it('tilts a block that stands over its depth', () => {
    expectClose(plateIn(sittingDoubt('right', BLOCK, KIT)), KIT.plate / Math.sqrt(3) / 60);
    expectClose(plateIn(sittingDoubt('back', BLOCK, KIT)), KIT.plate / Math.sqrt(3) / 40);
  });
});

describe('warmth', () => {
  it('along either axis in a face makes the thickness behind it grow towards the warm side', () => {
    // A place on the face itself: 30 mm out, whose own axis has no say.
    const found = thicknessWarmth('right', { x: 30, y: 15, z: -40 }, BLOCK, KIT);
    expect(found.map(({ source }) => source)).toEqual(['warmth along y', 'warmth along z']);
    const growth = (along: number) =>
      taperByWarmth({ coefficient: 11.5, difference: DIFFERENCE, along, across: 60 });
    expectClose(found[0]!.shift as number, 15 * growth(40));
    expectClose(found[1]!.shift as number, -40 * growth(90));
  });

  it('through the block bows a face as much as an arc of its length', () => {
    // From the middle to the end of either axis alone: the bow over that length.
    const through = { coefficient: 11.5, difference: DIFFERENCE, along: 60 };
    const over = (across: number) => bowByWarmth({ ...through, across });
    expectClose(bowOfWarmth('right', { ...CENTRE, z: 45 }, BLOCK, KIT), over(90));
    expectClose(bowOfWarmth('right', { ...CENTRE, y: -20 }, BLOCK, KIT), over(40));
    expectClose(bowOfWarmth('right', { x: 30, y: 20, z: 45 }, BLOCK, KIT), over(90) + over(40));
    expect(bowOfWarmth('right', CENTRE, BLOCK, KIT)).toBe(0);
  });
});
