import { expect, it } from 'vitest';
import { besideEachOther, day, fullDay, moment } from '../../src/words/time';

it('a moment is said in the time of the place, day before month', () => {
  // Without a zone the text is local time already, wherever the test runs.
  expect(moment('2024-03-05T14:07:59')).toBe('5 Mar 2024, 14:07');
  expect(moment('2023-12-31T09:05:00')).toBe('31 Dec 2023, 09:05');
});

it('a day is said short', () => {
  expect(day('2024-03-05T14:07:59')).toBe('5 Mar');
});

it('a day is said with its year', () => {
  expect(fullDay('2024-01-15T00:00:00')).toBe('15 Jan 2024');
});

it('moments side by side are told by their days, or on one day by the time', () => {
  const [morning, noon, later] = [
    '2024-03-05T09:05:00',
    '2024-03-05T12:30:00',
    '2024-03-06T08:00:00',
  ] as const;
  expect(besideEachOther([morning, noon])).toEqual(['09:05', '12:30']);
  expect(besideEachOther([morning, noon, later])).toEqual(['5 Mar', '5 Mar', '6 Mar']);
  expect(besideEachOther(['2023-03-05T09:05:00', morning])).toEqual(['5 Mar', '5 Mar']);
});
