import { expect, it } from 'vitest';
import { daysAgo } from '../../src/words/merging';
import { moment } from '../../src/words/time';

const THEN = '2024-03-05T14:07:00.000Z';

it.each([
  ['2024-03-05T14:07:00.000Z', 'within the last day'],
  ['2024-03-06T14:06:59.999Z', 'within the last day'],
  ['2024-03-06T14:07:00.000Z', 'a day ago'],
  ['2024-03-07T14:06:59.999Z', 'a day ago'],
  ['2024-03-07T14:07:00.000Z', '2 days ago'],
  ['2024-04-05T14:07:00.000Z', '31 days ago'],
])('at %s the last backup is from %s', (now, words) => {
  expect(daysAgo(THEN, now)).toBe(words);
});

it.each(['2024-03-05T14:06:59.999Z', '2024-03-04T14:07:00.000Z', '1970-01-01T00:00:00.000Z'])(
  'a backup of later than the clock, which was set back to %s, has no age, and that is said',
  (now) => {
    const said = daysAgo(THEN, now);
    expect(said).toContain(moment(THEN));
    expect(said).toContain('check the date');
    expect(said).not.toMatch(/-\d|ago/);
  },
);
