import { describe, expect, it } from 'vitest';
import { swappedDigits, swappedIn } from '../../src/entry/swapped-digits';
import { micrometerSetup, noseSetup } from './support/setups';

const thick = micrometerSetup([
  ['5', '', '30.012'],
  ['85', '', '30.061'],
]);
const [first, second] = thick.places.map(({ id }) => id);

describe('two digits the other way round', () => {
  it('are found where they make up for what the reading is off by', () => {
    expect(swappedDigits([thick], { reading: second!, by: 45, within: 2 })).toBe('30.016');
    expect(swappedDigits([thick], { reading: second!, by: 46.9, within: 2 })).toBe('30.016');
  });

  it('are not where they go the other way, not far enough, or make no other number', () => {
    for (const by of [-45, 42.9, 47.1]) {
      expect(swappedDigits([thick], { reading: second!, by, within: 2 })).toBeUndefined();
    }
    expect(swappedDigits([thick], { reading: first!, by: 45, within: 2 })).toBeUndefined();
  });

  it('may stand on both sides of the decimal mark, as it was typed', () => {
    const [right] = [{ right: '12,5', left: '1' }].map((typed) => noseSetup(typed));
    expect(swappedDigits([right!], { reading: 'on right', by: -2.7, within: 0.1 })).toBe('15,2');
  });

  it('go the other way with an indicator that counts the other way', () => {
    const setup = noseSetup({ right: '61' });
    const indicator = { kind: 'indicator', plus: 'let out' } as const;
    const turned = { ...setup, indicator } as unknown as typeof setup;
    expect(swappedDigits([setup], { reading: 'on right', by: 45, within: 1 })).toBe('16');
    expect(swappedDigits([turned], { reading: 'on right', by: 45, within: 1 })).toBeUndefined();
    expect(swappedDigits([turned], { reading: 'on right', by: -45, within: 1 })).toBe('16');
  });

  it('are those that were typed, whatever unit it stands in now', () => {
    const setup = noseSetup();
    const [right, left] = setup.placings;
    const reading = { text: '0.591', unit: 'thou', from: { text: '15', unit: 'µm' } } as const;
    const converted = { ...setup, placings: [{ ...right!, reading }, left!] };
    const off = { reading: 'on right', by: 15 - 51, within: 0.1 };
    expect(swappedDigits([converted], off)).toBe('51');
  });
});

it('of a reading that others check are taken within twice the doubt of how far it is off', () => {
  const check = { reading: second!, residual: 11.25, redundancy: 0.25, standardised: 20 };
  expect(swappedIn([thick], { ...check, blunder: 49 })).toBe('30.016'); // 2 × 49 / 20 = 4.9
  expect(swappedIn([thick], { ...check, blunder: 51 })).toBeUndefined(); // 5.1
  expect(
    swappedIn([thick], { ...check, blunder: undefined, standardised: undefined }),
  ).toBeUndefined();
});
