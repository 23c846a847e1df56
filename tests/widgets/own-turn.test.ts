import { afterEach, beforeEach, expect, test, vi } from 'vitest';
import { inOwnTurn } from '../../src/widgets/own-turn';

beforeEach(() => {
  vi.useFakeTimers();
});

afterEach(() => {
  vi.useRealTimers();
});

test('each has a turn of its own, and what it changes is drawn before the next', () => {
  const done: string[] = [];
  const draws = (name: string) => () => {
    done.push(name);
    setTimeout(() => done.push(`${name} drawn`));
  };
  inOwnTurn(draws('first'));
  inOwnTurn(draws('second'));
  expect(done).toEqual([]);
  vi.advanceTimersToNextTimer();
  expect(done).toEqual(['first']);
  vi.runAllTimers();
  expect(done).toEqual(['first', 'first drawn', 'second', 'second drawn']);
});

test('what is asked for while others are done has its turn too, now and later', () => {
  const done: number[] = [];
  inOwnTurn(() => {
    done.push(1);
    inOwnTurn(() => done.push(2));
  });
  vi.runAllTimers();
  inOwnTurn(() => done.push(3));
  vi.runAllTimers();
  expect(done).toEqual([1, 2, 3]);
});

test('what is called off is not done, and what fails keeps nothing from its turn', () => {
  const done: string[] = [];
  const callOff = inOwnTurn(() => done.push('called off'));
  inOwnTurn(() => {
    throw new Error('It fails');
  });
  inOwnTurn(() => done.push('after it'));
  callOff();
  expect(() => vi.runAllTimers()).toThrow('It fails');
  vi.runAllTimers();
  expect(done).toEqual(['after it']);
});
