import { describe, expect, it } from 'vitest';
import { fieldKey } from '../../src/entry/field-keys';
import { readSetups } from '../../src/entry/read-setups';
import { noUnit } from './support/no-unit';
import { PART } from './support/part';
import { noseSetup } from './support/setups';
import { missing, told, wrong } from './support/told';

const NOSE = fieldKey.noseHeight('nose');
const INDICATOR = fieldKey.indicatorHeight('nose');
const ABOVE = 'Above the part, which is 90 mm high there';
const BELOW = 'Below the plate: heights count up from it';
const ORDER = 'The indicator must stand above the nose';

function read(heights: { nose?: string; indicator?: string }, base: 'bottom' | 'right' = 'bottom') {
  const setup = noseSetup(heights, undefined, base);
  const { readings, problems } = readSetups([setup], PART);
  return { readings, problems: told(problems) };
}

describe('heights that are refused, and no reading is made', () => {
  it.each([
    ['letters', { nose: 'six' }, NOSE, noUnit('six')],
    ['two marks', { indicator: '8,0.0' }, INDICATOR, 'Two decimal marks: keep one'],
    ['above the part', { indicator: '90.1' }, INDICATOR, ABOVE],
    ['a nose above the part', { nose: '91' }, NOSE, ABOVE],
    ['below the plate', { nose: '-1' }, NOSE, BELOW],
    ['an indicator as high as the nose', { nose: '6', indicator: '6.0' }, INDICATOR, ORDER],
    ['an indicator below the nose', { nose: '80', indicator: '6' }, INDICATOR, ORDER],
  ])('%s', (_, heights, key, message) => {
    expect(read(heights)).toEqual({ readings: [], problems: { [key]: wrong(message) } });
  });

  it('as high as the part when it stands on another face', () => {
    const { problems } = read({ indicator: '60.1' }, 'right');
    expect(problems).toEqual({ [INDICATOR]: wrong('Above the part, which is 60 mm high there') });
  });
});

describe('heights that are still to come', () => {
  it('are missing, not wrong, and no reading is made', () => {
    expect(read({ nose: '', indicator: '' })).toEqual({
      readings: [],
      problems: {
        [NOSE]: missing('How high above the plate?'),
        [INDICATOR]: missing('How high above the plate?'),
      },
    });
  });
});

describe('heights at the ends of the part', () => {
  it.each([
    ['the plate', { nose: '0' }],
    ['the top', { indicator: '90' }],
  ])('%s', (_, heights) => {
    const { readings, problems } = read(heights);
    expect(problems).toEqual({});
    expect(readings).toHaveLength(2);
  });

  it('may be typed in another unit than the sizes of the part', () => {
    const part = { ...PART, block: { size: { x: 60, y: 40, z: 60 } } };
    // 60 mm rounded up to a billionth of an inch, as after a change of units.
    const setup = noseSetup(
      { nose: '0.25', indicator: '2.362204725' },
      { size: 'in', reading: 'µm' },
    );
    const { readings, problems } = readSetups([setup], part);
    expect(told(problems)).toEqual({});
    expect(readings).toHaveLength(2);
  });
});
