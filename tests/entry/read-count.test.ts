import { expect, it } from 'vitest';
import { readCount } from '../../src/entry/read-count';
import { wrong } from './support/told';

it.each([
  ['20', 20],
  ['0,5', 0.5],
  [' 100000 ', 100_000],
])('%j seconds or strokes are %d', (text, count) => {
  expect(readCount(text)).toEqual({ count, problem: undefined });
});

it('nothing typed is no count, and not wrong', () => {
  expect(readCount('  ')).toEqual({ count: undefined, problem: undefined });
});

it.each([
  ['0', 'Above 0'],
  ['-3', 'Above 0'],
  ['100001', 'More than a day’s work: check the figure'],
  ['20 s', 'Digits only, with a sign and one decimal mark at most'],
  ['1.2.3', 'Two decimal marks: keep one'],
])('%j is refused: %s', (text, message) => {
  expect(readCount(text)).toEqual({ count: undefined, problem: wrong(message) });
});
