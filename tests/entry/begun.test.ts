import { describe, expect, test } from 'vitest';
import { isBegun } from '../../src/entry/begun';
import { readLengthText } from '../../src/entry/length-text';
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
