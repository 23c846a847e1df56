import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { readNumber } from '../../src/entry/number';

const CHARACTERS = 'Digits only, with a sign and one decimal mark at most';
const MARKS = 'Two decimal marks: keep one';
const DIGITS = 'The digits are missing';

describe('a number that is read', () => {
  it.each([
    ['0', 0],
    ['12', 12],
    ['3.5', 3.5],
    ['3,5', 3.5],
    ['1,234', 1.234],
    ['.5', 0.5],
    [',5', 0.5],
    ['5.', 5],
    ['-2.5', -2.5],
    ['−2.5', -2.5],
    ['+7', 7],
    ['-,5', -0.5],
    ['007', 7],
    ['00.10', 0.1],
    ['  8 ', 8],
    ['\t8\n', 8],
    ['123456789012345', 123456789012345],
    ['0.00000000000001', 1e-14],
  ])('%j', (text, value) => {
    expect(readNumber(text)).toEqual({ ok: true, value });
  });

  it.each(['-0', '−0', '-0.00', '-,0'])('%j is plain 0, without its sign', (text) => {
    const read = readNumber(text);
    expect(read.ok && Object.is(read.value, 0)).toBe(true);
  });
});

describe('text that is refused, with the reason', () => {
  it.each([
    ['', 'Nothing typed yet'],
    ['  ', 'Nothing typed yet'],
    ['1.234,5', MARKS],
    ['1,234.5', MARKS],
    ['1.2.3', MARKS],
    ['1,2,3', MARKS],
    ['..', MARKS],
    ['abc', CHARACTERS],
    ['12mm', CHARACTERS],
    ['1e3', CHARACTERS],
    ['1E-3', CHARACTERS],
    ['0x10', CHARACTERS],
    ['NaN', CHARACTERS],
    ['Infinity', CHARACTERS],
    ['1 234', CHARACTERS],
    ['- 5', CHARACTERS],
    ['--5', CHARACTERS],
    ['+-5', CHARACTERS],
    ['5-', CHARACTERS],
    ['–5', CHARACTERS],
    ['٣', CHARACTERS],
    ['1/2', CHARACTERS],
    ['-', DIGITS],
    ['−', DIGITS],
    ['+', DIGITS],
    ['.', DIGITS],
    [',', DIGITS],
    ['-.', DIGITS],
    ['1234567890123456', 'Too many digits'],
    ['0.000000000000001', 'Too many digits'],
  ])('%j: %s', (text, message) => {
    expect(readNumber(text)).toEqual({ ok: false, message });
  });
});

describe('whatever is typed', () => {
  const nearlyNumbers = fc.string({
    unit: fc.constantFrom(...'0123456789+-−.,eE '),
    maxLength: 20,
  });
  const anything = fc.oneof(fc.string({ unit: 'binary' }), nearlyNumbers);

  it('gives a finite number or a message, never NaN and never minus zero', () => {
    fc.assert(
      fc.property(anything, (text) => {
        const read = readNumber(text);
        if (!read.ok) expect(read.message).not.toBe('');
        else expect(Number.isFinite(read.value) && !Object.is(read.value, -0)).toBe(true);
      }),
    );
  });

  it('reads a decimal as JavaScript does, with either mark', () => {
    const digits = fc.string({
      unit: fc.constantFrom(...'0123456789'),
      minLength: 1,
      maxLength: 7,
    });
    const sign = fc.constantFrom('', '-', '+');
    fc.assert(
      fc.property(sign, digits, digits, (before, whole, fraction) => {
        const value = Number(`${before}${whole}.${fraction}`) + 0; // + 0 makes -0 plain
        for (const mark of '.,') {
          const read = readNumber(`${before}${whole}${mark}${fraction}`);
          expect(read).toEqual({ ok: true, value });
        }
      }),
    );
  });
});
