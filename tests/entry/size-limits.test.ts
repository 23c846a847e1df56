import { describe, expect, it } from 'vitest';
import { fieldKey } from '../../src/entry/field-keys';
import { partInUnit } from '../../src/entry/in-units';
import { readPart } from '../../src/entry/read-part';
import { anySizeLimit, sizeLimitsOf } from '../../src/entry/size-limits';
import { noUnit } from './support/no-unit';
import { ENTRY } from './support/part';
import { told, wrong } from './support/told';
import { inch, mm } from './support/typed';

const limited = (lower: string, upper: string) =>
  ({ ...ENTRY, sizeLimits: { x: { lower: mm(lower), upper: mm(upper) } } }) as const;

describe('limits of a size', () => {
  it('are departures in µm with their signs', () => {
    const { part, problems } = readPart(limited('-0.01', '0,005'));
    expect(part?.sizeLimits).toEqual({ x: { lower: -10, upper: 5 } });
    expect(told(problems)).toEqual({});
  });

  it('may be given on one side only, and both on one side of the size', () => {
    expect(readPart(limited('-0.02', '')).part?.sizeLimits).toEqual({ x: { lower: -20 } });
    expect(readPart(limited('0.01', '0.03')).part?.sizeLimits).toEqual({
      x: { lower: 10, upper: 30 },
    });
  });

  it('are none where nothing is typed', () => {
    expect(readPart(limited(' ', '')).part).not.toHaveProperty('sizeLimits');
    expect(anySizeLimit(limited('', ''))).toBe(false);
    expect(anySizeLimit(ENTRY)).toBe(false);
    expect(sizeLimitsOf(ENTRY, 'y')).toEqual({ lower: mm(''), upper: mm('') });
  });

  it.each([
    ['0.005', '-0.01', fieldKey.upperLimit('x'), 'Not above the lower limit. Check the signs'],
    ['0.005', '0.005', fieldKey.upperLimit('x'), 'Not above the lower limit. Check the signs'],
    [
      '59.99',
      '',
      fieldKey.lowerLimit('x'),
      'Over 5 mm from the size: a limit is how far the size may be off, with its sign',
    ],
    ['-0.o1', '', fieldKey.lowerLimit('x'), noUnit('o')],
  ])('%s and %s are refused', (lower, upper, field, message) => {
    const { part, problems } = readPart(limited(lower, upper));
    expect(told(problems)).toEqual({ [field]: wrong(message) });
    expect(part).not.toHaveProperty('sizeLimits');
  });

  it('go along into inches and back', () => {
    const entry = { ...limited('-0.0254', '0'), finish: { text: '0.4', unit: 'µm' as const } };
    const inches = partInUnit(entry, 'in');
    expect(inches.sizeLimits?.x).toEqual({ lower: inch('-0.001'), upper: inch('0') });
    expect(inches.finish?.unit).toBe('µin');
    expect(partInUnit(inches, 'mm').sizeLimits?.x).toEqual(entry.sizeLimits.x);
    expect(partInUnit(inches, 'mm').finish?.text).toBe('0.4');
    expect(readPart(inches).part?.sizeLimits?.x?.lower).toBeCloseTo(-25.4, 9);
  });
});

describe('the finish', () => {
  const finished = (text: string, unit: 'µm' | 'µin') =>
    readPart({ ...ENTRY, finish: { text, unit } });

  it('is Ra in µm, and 16 microinches are 0.4064 µm', () => {
    expect(finished('0.4', 'µm').part?.roughness).toBe(0.4);
    expect(finished('16', 'µin').part?.roughness).toBeCloseTo(0.4064, 12);
    expect(finished(' ', 'µm').part).not.toHaveProperty('roughness');
  });

  it.each([
    ['0', 'No usual Ra: check the figure and the unit'],
    ['-0.4', 'No usual Ra: check the figure and the unit'],
    ['400', 'No usual Ra: check the figure and the unit'],
    ['fine', 'Digits only, with a sign and one decimal mark at most'],
  ])('%s is refused', (text, message) => {
    const { part, problems } = finished(text, 'µm');
    expect(told(problems)).toEqual({ [fieldKey.finish()]: wrong(message) });
    expect(part).not.toHaveProperty('roughness');
  });
});
