import { describe, expect, it } from 'vitest';
import { DEFAULT_METHOD_SETTINGS } from '../../src/core/correction/method/method-settings';
import { fieldKey } from '../../src/entry/field-keys';
import {
  type MethodLimitsEntry,
  readMethodLimits,
  usualMethodLimits,
} from '../../src/entry/method-limits';
import { noUnit } from './support/no-unit';
import { missing, told, wrong } from './support/told';
import { inch, micro, mm, tenths } from './support/typed';

const LIMITS = ['mostLapped', 'mostGround', 'lappedSide'] as const;
const ASKED = missing('Needed to choose between lapping, grinding and machining');

function read(changed: Partial<MethodLimitsEntry> = {}) {
  const { settings, problems } = readMethodLimits({ ...usualMethodLimits(), ...changed });
  return { settings, problems: told(problems) };
}

describe('the lines between lapping, grinding and machining', () => {
  it('as they come are those of the core', () => {
    expect(read()).toEqual({ settings: DEFAULT_METHOD_SETTINGS, problems: {} });
    expect(usualMethodLimits()).toEqual({
      mostLapped: micro('20'),
      mostGround: micro('500'),
      lappedSide: mm('100'),
    });
  });

  it('are depths in µm and an area in mm², whatever they were typed in', () => {
    const { settings, problems } = read({
      mostLapped: tenths('10'),
      mostGround: mm('0,25'),
      lappedSide: inch('4'),
    });
    expect(problems).toEqual({});
    expect(settings.mostLapped).toBeCloseTo(25.4, 12);
    expect(settings.mostGround).toBe(250);
    // 101.6 mm squared.
    expect(settings.largestLapped).toBeCloseTo(10_322.56, 8);
  });

  it.each([
    ['mostLapped', micro('0.1'), { mostLapped: 0.1 }],
    ['mostLapped', mm('10'), { mostLapped: 10_000 }],
    ['mostGround', micro('0.1'), { mostGround: 0.1 }],
    ['mostGround', mm('10'), { mostGround: 10_000 }],
    ['lappedSide', mm('1'), { largestLapped: 1 }],
    ['lappedSide', mm('1000'), { largestLapped: 1_000_000 }],
  ] as const)('may have a %s of %o', (item, typed, settings) => {
    expect(read({ [item]: typed })).toEqual({
      settings: { ...DEFAULT_METHOD_SETTINGS, ...settings },
      problems: {},
    });
  });
});

describe('a line that cannot be read', () => {
  it.each(LIMITS)('is asked for where it is not there: %s', (item) => {
    for (const typed of [mm(''), micro(' ')]) {
      expect(read({ [item]: typed })).toEqual({
        settings: DEFAULT_METHOD_SETTINGS,
        problems: { [fieldKey.methodLimit(item)]: ASKED },
      });
    }
  });

  it.each([
    ['mostLapped', micro('0'), wrong('Above 0')],
    ['mostLapped', micro('-20'), wrong('Above 0')],
    ['mostLapped', mm('10.001'), wrong('Over 10 mm: check the figure and the unit')],
    ['mostLapped', micro('20 m'), wrong(noUnit('m'))],
    ['mostGround', micro('0'), wrong('Above 0')],
    ['mostGround', micro('-500'), wrong('Above 0')],
    ['mostGround', mm('500'), wrong('Over 10 mm: check the figure and the unit')],
    ['mostGround', micro('5e2'), wrong(noUnit('e'))],
    ['lappedSide', mm('0'), wrong('Under 1 mm: check the figure and the unit')],
    ['lappedSide', mm('0.9999'), wrong('Under 1 mm: check the figure and the unit')],
    ['lappedSide', mm('-100'), wrong('Under 1 mm: check the figure and the unit')],
    ['lappedSide', micro('100'), wrong('Under 1 mm: check the figure and the unit')],
    ['lappedSide', mm('1000.1'), wrong('Over 1 m: check the figure and the unit')],
    ['lappedSide', mm('100 a side'), wrong(noUnit('a'))],
  ] as const)('is as in common practice, and told: %s of %o', (item, typed, problem) => {
    expect(read({ [item]: typed })).toEqual({
      settings: DEFAULT_METHOD_SETTINGS,
      problems: { [fieldKey.methodLimit(item)]: problem },
    });
  });

  it('leaves the others as they are typed', () => {
    const typed = { mostLapped: micro('30'), mostGround: mm('x'), lappedSide: mm('') };
    expect(read(typed)).toEqual({
      settings: { ...DEFAULT_METHOD_SETTINGS, mostLapped: 30 },
      problems: {
        [fieldKey.methodLimit('mostGround')]: wrong(noUnit('x')),
        [fieldKey.methodLimit('lappedSide')]: ASKED,
      },
    });
  });
});
