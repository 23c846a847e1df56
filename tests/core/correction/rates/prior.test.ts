import { describe, expect, it } from 'vitest';
import { learnRate } from '../../../../src/core/correction/rates/learn-rate';
import { priorRate, type WorkKind } from '../../../../src/core/correction/rates/prior';
import { expectClose } from '../../support/close';

const USUAL: WorkKind = { per: 'second', material: 'aluminium 6061', grit: 320 };

describe('the prior of aluminium on 320 to 400 grit', () => {
  it.each(['aluminium 2024', 'aluminium 6061', 'aluminium 7075', 'cast aluminium 356'] as const)(
    'is the common practice: half of all shops take 2 to 6 µm in 10 s (%s)',
    (material) => {
      for (const grit of [320, 360, 400]) {
        const prior = priorRate({ per: 'second', material, grit });
        expect(prior.basis).toBe('common practice');
        const { low, high } = learnRate([], prior, 0.5).typical;
        expectClose(low * 10, 2, { relative: 1e-3 });
        expectClose(high * 10, 6, { relative: 1e-3 });
      }
    },
  );

  it('is wide: a shop may well be four times slower or faster than the middle', () => {
    const { low, median, high } = learnRate([], priorRate(USUAL)).typical;
    expect(high / median).toBeGreaterThan(3.5);
    expect(median / low).toBeGreaterThan(3.5);
  });
});

describe('the prior of anything else', () => {
  const usual = priorRate(USUAL);

  it.each<[string, WorkKind]>([
    ['another material', { ...USUAL, material: 'tool steel O1' }],
    ['a coarser paper', { ...USUAL, grit: 240 }],
    ['a finer paper', { ...USUAL, grit: 600 }],
    ['a material that is not known', { per: 'second', grit: 320 }],
    ['a paper that is not known', { per: 'second', material: 'aluminium 6061' }],
    ['nothing known', { per: 'second' }],
  ])('has the same middle and twice the spread, and says so: %s', (_, kind) => {
    const prior = priorRate(kind);
    expect(prior.basis).toBe('other material or abrasive');
    expect(prior.median).toBe(usual.median);
    expectClose(prior.logStandard, 2 * usual.logStandard);
    expect(learnRate([], prior).basis).toBe('other material or abrasive');
  });

  it('is wider for strokes, which take their own time', () => {
    const strokes = priorRate({ ...USUAL, per: 'stroke' });
    expect(strokes.median).toBe(usual.median);
    expect(strokes.logStandard).toBeGreaterThan(1.2 * usual.logStandard);
    expect(strokes.basis).toBe('common practice');
  });
});
