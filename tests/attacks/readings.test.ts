import { env } from 'node:process';
import { beforeAll, expect, test } from 'vitest';
import { attackWith } from './support/many';
import { unsound } from './support/sound';

// `npm run attack:readings` sets these; the check goes by the same few each time.
const COUNT = Number(env.ATTACK_COUNT ?? 300);
const SEED = Number(env.ATTACK_SEED ?? 1);

beforeAll(() => {
  // What is drawn of an answer looks where it is.
  Object.assign(globalThis, { location: new URL('http://localhost/') });
});

test(
  'whatever is typed is refused in words or answered rightly, and is never changed',
  () => {
    const tally = attackWith(COUNT, SEED);
    expect(tally.refused).toBeGreaterThan(COUNT / 10);
    expect(tally.answered).toBeGreaterThan(COUNT / 10);
  },
  // This is only to end what hangs.
  120_000 + COUNT * 1000,
);

test('a number that is none is found, however deep and late', () => {
  const late = {
    get value() {
      return [new Map([['one', Number.NaN]]), new Set([Number.POSITIVE_INFINITY])];
    },
  };
  expect(unsound({ late, degreesOfFreedom: Number.POSITIVE_INFINITY })).toEqual([
    '.late.value.0.one: NaN',
    '.late.value.1.*: Infinity',
  ]);
});
