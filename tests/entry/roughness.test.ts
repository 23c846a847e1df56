import { describe, expect, it } from 'vitest';
import { roughnessInUnit, type TypedRoughness } from '../../src/entry/roughness';

const typed: TypedRoughness = { text: '0.20', unit: 'µm' };

describe('a roughness put into the other unit', () => {
  it('is the same in that', () => {
    // An inch is 25.4 mm exactly.
    expect(roughnessInUnit(typed, 'µin')).toMatchObject({ text: '7.87402', unit: 'µin' });
  });

  it('is what was typed once it is back, idle zeros too', () => {
    expect(roughnessInUnit(roughnessInUnit(typed, 'µin'), 'µm')).toEqual(typed);
    expect(roughnessInUnit(typed, 'µm')).toEqual(typed);
  });

  it('is what it was changed to since', () => {
    const changed = { ...roughnessInUnit(typed, 'µin'), text: '16' };
    expect(roughnessInUnit(changed, 'µm')).toMatchObject({ text: '0.4064', unit: 'µm' });
  });

  it('keeps a text that is no number', () => {
    expect(roughnessInUnit({ text: 'N4', unit: 'µm' }, 'µin')).toEqual({ text: 'N4', unit: 'µin' });
  });
});
