import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { LENGTH_UNITS } from '../../src/core/units/length';
import {
  arcSecondsWithDoubt,
  deviation,
  deviationNumber,
  rounded,
  size,
  withDoubt,
} from '../../src/words/numbers';

describe('a rounded number', () => {
  it.each([
    [1.824, 2, '1.82'],
    [1.826, 2, '1.83'],
    [0.875 - 1e-15, 2, '0.88'],
    [31.575, 2, '31.58'],
    [-1.826, 2, '−1.83'],
    [3, 2, '3.00'],
    [12.5, 0, '13'],
    [0, 2, '0.00'],
    [-0, 2, '0.00'],
    [-0.004, 2, '0.00'],
    [-0.006, 2, '−0.01'],
    [Number.NaN, 2, '–'],
    [Number.POSITIVE_INFINITY, 2, '–'],
    [Number.NEGATIVE_INFINITY, 2, '–'],
  ])('%d with %d decimals is %s', (value, decimals, text) => {
    expect(rounded(value, decimals)).toBe(text);
  });

  it('never has a hyphen for a minus, and a minus only before something', () => {
    const value = fc.oneof(fc.double(), fc.double({ min: -0.02, max: 0.02 }));
    fc.assert(
      fc.property(value, fc.constantFrom(...LENGTH_UNITS), (micrometres, unit) => {
        const text = deviationNumber(micrometres, unit);
        expect(text).not.toContain('-');
        if (text.startsWith('−')) expect(text).toMatch(/[1-9]/);
      }),
    );
  });
});

describe('a deviation', () => {
  it.each([
    ['µm', '25.40 µm'],
    ['mm', '0.02540 mm'],
    ['tenths', '10.00 tenths'],
    ['thou', '1.000 thou'],
    ['in', '0.001000 in'],
  ] as const)('of 25.4 µm in %s is %s', (unit, text) => {
    expect(deviation(25.4, unit)).toBe(text);
  });

  it('has its expanded uncertainty beside it', () => {
    expect(withDoubt(1.824, 1.266, 'µm')).toBe('1.82 ± 1.27 µm');
    expect(withDoubt(-2.54, 2.54, 'tenths')).toBe('−1.00 ± 1.00 tenths');
  });

  it('that there is not is a dash', () => {
    expect(withDoubt(Number.NaN, Number.NaN, 'µm')).toBe('– ± – µm');
  });
});

it('an angle has its expanded uncertainty beside it', () => {
  expect(arcSecondsWithDoubt(4.181, 2.902)).toBe('4.18 ± 2.90″');
  expect(arcSecondsWithDoubt(-0.001, 1)).toBe('0.00 ± 1.00″');
});

describe('a size', () => {
  it.each([
    [90, 'mm', '90 mm'],
    [19.99999999, 'mm', '20 mm'],
    [12.3456, 'mm', '12.346 mm'],
    [100, 'mm', '100 mm'],
    [88.9, 'in', '3.5 in'],
    [10, 'in', '0.3937 in'],
    [0, 'mm', '0 mm'],
  ] as const)('of %d mm in %s is %s, without idle zeros', (millimetres, unit, text) => {
    expect(size(millimetres, unit)).toBe(text);
  });
});
