import { describe, expect, it } from 'vitest';
import { defaultKit } from '../../src/entry/kit-entry';
import { readKit } from '../../src/entry/read-kit';
import { INCH_STEP, isStepInQuestion } from '../../src/entry/step-in-question';

const KIT = defaultKit();

describe('the step of the dial', () => {
  it.each(['tenths', 'thou', 'in'] as const)('is asked about where readings are in %s', (unit) => {
    expect(isStepInQuestion(KIT, unit)).toBe(true);
  });

  it.each(['µm', 'mm'] as const)('is not where they are in %s', (unit) => {
    expect(isStepInQuestion(KIT, unit)).toBe(false);
  });

  it('is not once it was typed, or an indicator was taken out of the drawer', () => {
    const typed = { ...KIT, indicatorResolution: { text: '1.0', unit: 'µm' } } as const;
    expect(isStepInQuestion(typed, 'tenths')).toBe(false);
    const indicator = { id: 'i', name: 'Mine' };
    expect(isStepInQuestion({ ...KIT, chosen: { indicator } }, 'tenths')).toBe(false);
  });

  it('is 2.54 µm where it is a tenth', () => {
    const { kit } = readKit({ ...KIT, indicatorResolution: INCH_STEP });
    expect(kit?.indicatorResolution).toBeCloseTo(2.54, 12);
    expect(isStepInQuestion({ ...KIT, indicatorResolution: INCH_STEP }, 'tenths')).toBe(false);
  });
});
