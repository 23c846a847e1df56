import { expect, it } from 'vitest';
import { day, moment } from '../../src/words/time';

it('a moment is said in the time of the place, day before month', () => {
  // Without a zone the text is local time already, wherever the test runs.
  expect(moment('2024-03-05T14:07:59')).toBe('5 Mar 2024, 14:07');
});

it('a day is said short', () => {
  expect(day('2024-03-05T14:07:59')).toBe('5 Mar');
});
