import { expect, it } from 'vitest';
import { countInWords, noneInWords } from '../../src/words/part-states';

it('parts are counted, thousands apart', () => {
  expect(countInWords(0, 0)).toBe('0 parts');
  expect(countInWords(1, 1)).toBe('1 part');
  expect(countInWords(30, 999)).toBe('30 of 999 parts');
  expect(countInWords(30, 5000)).toBe('30 of 5,000 parts');
  expect(countInWords(30, 1234567)).toBe('30 of 1,234,567 parts');
});

it('an empty shelf is told from a search that finds nothing', () => {
  expect(noneInWords(true)).toBe('No such part.');
  expect(noneInWords(false)).toBe('No part lies here.');
});
