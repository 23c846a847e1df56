import fc from 'fast-check';
import { afterAll, describe, expect, it } from 'vitest';
import { LENGTH_UNITS, toMicrometres } from '../../src/core/units/length';
import { provideArithmetic } from '../../src/entry/arithmetic';
import { readLengthText } from '../../src/entry/length-text';
import { readNumber } from '../../src/entry/number';
import { withSums } from './support/sums';

withSums();

describe('a length that is read in a field of µm', () => {
  it.each([
    ['18.5', 18.5],
    ['2,5', 2.5],
    ['-34', -34],
    ['20+1.5', 21.5],
    ['20 + 1,5', 21.5],
    ['−20 − 1.5', -21.5],
    ['34+1/2', 34.5],
    ['2 1/2', 2.5],
    ['-2 1/2', -2.5],
    ['0 15/16', 0.9375],
    ['2 1/2 in', 63500],
    ['2 1/2"', 63500],
    ['3 - 1 1/4', 1.75],
    ['3 / 1 1/2', 2],
    ['2 × 1 1/4 thou + 1 tenth', 66.04],
    ['2*(3 - 1)', 4],
    ['2 × 3 ÷ 4', 1.5],
    ['-(4)', -4],
    ['.5+5.', 5.5],
    ['007+1', 8],
    ['-2 tenths', -5.08],
    ['1 tenth', 2.54],
    ['0.0001 in', 2.54],
    ['0.0001"', 2.54],
    ['1/2 thou', 12.7],
    ['5 µm', 5],
    ['5 μm', 5],
    ['5um', 5],
    ['0.2 thou', 5.08],
    ['0.005 mm', 5],
    ['0,005MM', 5],
    ['1 thou + 2 tenths', 30.48],
    ['(1 + 2) tenths', 7.62],
    ['3 tenths / 2', 3.81],
    ['2 * 3 µm', 6],
    ['6 mm / 3 mm', 2],
  ])('%j is %d µm', (text, length) => {
    const read = readLengthText(text, 'µm');
    expect(read.kind === 'length' && read.length).toBeCloseTo(length, 9);
  });

  it('a sum is in the unit of the field, a unit of its own overrides it', () => {
    expect(readLengthText('1+1', 'thou')).toMatchObject({ length: 50.8, from: 'sum' });
    expect(readLengthText('1 mm', 'thou')).toMatchObject({ length: 1000, from: 'own unit' });
    expect(readLengthText('3', 'thou')).toMatchObject({ from: 'number' });
  });
});

describe('text that is refused, with the reason', () => {
  it.each([
    ['', 'Nothing typed yet'],
    ['3.4,1', 'Two decimal marks: keep one'],
    ['3.4+1,5', 'Two kinds of decimal mark: keep to one'],
    ['3a4', '“a” is no unit: µm, mm, tenths, thou or in'],
    ['5 cm', '“cm” is no unit: µm, mm, tenths, thou or in'],
    ['1e3', '“e” is no unit: µm, mm, tenths, thou or in'],
    ['0x10', '“x” is no unit: µm, mm, tenths, thou or in'],
    ['sqrt(2)', '“sqrt” is no unit: µm, mm, tenths, thou or in'],
    ['a=1', '“a” is no unit: µm, mm, tenths, thou or in'],
    ['micrometre', '“micrometre” is no unit: µm, mm, tenths, thou or in'],
    ['2^3', 'Numbers, + − × / ( ) and units only'],
    ['[1,2]', 'Numbers, + − × / ( ) and units only'],
    ['1;2', 'Numbers, + − × / ( ) and units only'],
    ['2%', 'Numbers, + − × / ( ) and units only'],
    ['20+', 'A number is missing after “+”'],
    ['mm', 'A number is missing before “mm”'],
    ['2+mm', 'A number is missing before “mm”'],
    ['5 mm µm', 'A number is missing before “µm”'],
    ['1 2', 'Between two numbers: + − × or /'],
    ['1.5 1/2', 'Between two numbers: + − × or /'],
    ['1 1/2.5', 'Between two numbers: + − × or /'],
    ['1 1/2 1/2', 'Between two numbers: + − × or /'],
    ['1 2/2', 'After a whole number, a fraction less than 1: 2 1/2'],
    ['1 1/0', 'After a whole number, a fraction less than 1: 2 1/2'],
    ['1 mm 1/2', 'Between two numbers: + − × or /'],
    ['123456 123456/1234567', 'Too many digits'],
    ['2 mm 3', 'Between two numbers: + − × or /'],
    ['2(3)', 'Before a bracket: + − × or /'],
    ['(2', 'This does not work out: check the signs and brackets'],
    ['2)', 'This does not work out: check the signs and brackets'],
    ['2*/3', 'This does not work out: check the signs and brackets'],
    ['()', 'This does not work out: check the signs and brackets'],
    ['1/0', 'Divided by 0'],
    ['0/0', 'Divided by 0'],
    ['1 mm + 3', 'A length and a plain number together: give both a unit, or none'],
    ['2 mm * 3 mm', 'Not a length: check the units'],
    ['3 / (4 mm)', 'Not a length: check the units'],
    ['1234567890123456+1', 'Too many digits'],
    [`1${'+1'.repeat(20)}`, 'At most 40 characters'],
  ])('%j: %s', (text, message) => {
    expect(readLengthText(text, 'µm')).toEqual({ kind: 'wrong', message });
  });
});

describe('whatever is typed', () => {
  const nearly = fc
    .array(fc.constantFrom(...'0123456789.,+-*/() ', 'mm', 'µm', ' in', ' thou', '"', 'e', '='), {
      maxLength: 24,
    })
    .map((parts) => parts.join(''));
  const units = fc.constantFrom(...LENGTH_UNITS);

  it('gives a finite length or a message: never NaN, never minus zero, never a throw', () => {
    const anything = fc.oneof(fc.string({ unit: 'binary' }), nearly);
    fc.assert(
      fc.property(anything, units, (text, unit) => {
        const read = readLengthText(text, unit);
        if (read.kind !== 'length') expect(read.message).not.toBe('');
        else expect(Number.isFinite(read.length) && !Object.is(read.length, -0)).toBe(true);
      }),
      { numRuns: 3000 },
    );
  });

  it('is read as a plain number wherever it is one, without anything to work out sums', () => {
    fc.assert(
      fc.property(nearly, units, (text, unit) => {
        const number = readNumber(text);
        fc.pre(number.ok);
        const value = number.ok ? number.value : 0;
        const length = toMicrometres(value, unit);
        expect(readLengthText(text, unit)).toEqual({ kind: 'length', length, from: 'number' });
      }),
    );
  });

  it('sums and quotients are those of arithmetic', () => {
    const number = fc.integer({ min: 1, max: 9999 });
    fc.assert(
      fc.property(number, number, number, (a, b, c) => {
        const read = readLengthText(`${a} - (${b}/${c} + 1) thou / 1 thou`, 'mm');
        const length = (a - (b / c + 1)) * 1000;
        expect(read.kind === 'length' && Math.abs(read.length - length)).toBeLessThan(1e-6);
      }),
    );
  });
});

describe('before sums can be worked out', () => {
  afterAll(() => provideArithmetic(() => 'missing'));

  it('a sum waits, a number does not, and what is plainly wrong is told', () => {
    provideArithmetic(() => 'waiting');
    expect(readLengthText('1+1', 'µm').kind).toBe('waiting');
    expect(readLengthText('11', 'µm').kind).toBe('length');
    expect(readLengthText('1+x', 'µm').kind).toBe('wrong');
  });

  it('where they never can be, a number is asked for', () => {
    provideArithmetic(() => 'missing');
    expect(readLengthText('1+1', 'µm')).toMatchObject({
      kind: 'missing',
      message: expect.stringContaining('Type a number'),
    });
  });
});
