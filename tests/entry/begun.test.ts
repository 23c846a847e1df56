import { describe, expect, test } from 'vitest';
import { areOnlyBegun, isBegun } from '../../src/entry/begun';
import { fieldKey } from '../../src/entry/field-keys';
import { readLengthText } from '../../src/entry/length-text';
import type { Problems } from '../../src/entry/problems';
import { noseSetup } from './support/setups';
import { withSums } from './support/sums';

withSums();

describe('a text that is only begun', () => {
  test.each([
    ...['-', '−', '+', '0', '0.', '0,0', '-0.00', '.', '4+', '20 + ', '(', '(3+1', '2*', '-2 t'],
  ])('“%s” is right as far as it goes', (text) => {
    expect(isBegun(text)).toBe(true);
  });

  test.each(['4', '0.01', '4+8', '1/0.5', '(3+1)', '3 elephants', '12a', '4.5.6', '4)', '4$'])(
    '“%s” is not',
    (text) => {
      expect(isBegun(text)).toBe(false);
    },
  );

  test.each(['-2 tenths', '(20+1.5)*2 mm', '0.0001 in', '18,5', '2*-3', '-(4 + 1) micron'])(
    'typed key by key, “%s” is begun wherever it cannot be read',
    (text) => {
      const typed = Array.from(text, (_, at) => text.slice(0, at + 1));
      const wrong = typed.filter((one) => readLengthText(one, 'µm').kind === 'wrong');
      expect(wrong.filter((one) => !isBegun(one))).toEqual([]);
    },
  );
});

describe('setups of which something is wrong', () => {
  const right = fieldKey.placing('on right');
  const wrong = (...fields: string[]): Problems =>
    new Map(fields.map((field) => [field, { kind: 'wrong', message: 'Wrong' }] as const));

  test('are only begun where that is a reading half typed', () => {
    expect(areOnlyBegun([noseSetup({ right: '4+' })], wrong(right))).toBe(true);
    expect(areOnlyBegun([noseSetup({ right: '4..' })], wrong(right))).toBe(false);
  });

  test('are not where anything else is wrong too', () => {
    const left = fieldKey.placing('on left');
    const setups = [noseSetup({ right: '4+', left: 'x' })];
    expect(areOnlyBegun(setups, wrong(right, left))).toBe(false);
    expect(areOnlyBegun(setups, wrong(right, fieldKey.faces('another')))).toBe(false);
  });
});
