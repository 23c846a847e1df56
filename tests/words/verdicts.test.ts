import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Finding } from '../../src/core/inspection/findings';
import type { Verdict } from '../../src/core/verdict/conformity';
import { probabilityInWords } from '../../src/words/numbers';
import {
  chanceInWords,
  seatingsInWords,
  standsInWords,
  VERDICT_LABELS,
  verdictInWords,
} from '../../src/words/verdicts';

describe('a probability', () => {
  it.each([
    [1, 'more than 99.9\u00a0%'],
    [0.99901, 'more than 99.9\u00a0%'],
    [0.999, '99.9\u00a0%'],
    [0.9954, '99.5\u00a0%'],
    [0.99, '99\u00a0%'],
    [0.984, '98\u00a0%'],
    [0.5, '50\u00a0%'],
    [0.01, '1\u00a0%'],
    [0.0049, '0.5\u00a0%'],
    [0.001, '0.1\u00a0%'],
    [0.00099, 'less than 0.1\u00a0%'],
    [0, 'less than 0.1\u00a0%'],
  ])('of %d is %s', (probability, words) => {
    expect(probabilityInWords(probability)).toBe(words);
  });

  it('is never said to be 100 % or 0 %', () => {
    const near = fc.integer({ min: -1000, max: 1000 }).map((steps) => steps / 1e5);
    const any = fc.oneof(
      fc.double({ min: 0, max: 1, noNaN: true }),
      near.map((distance) => Math.abs(distance)),
      near.map((distance) => 1 - Math.abs(distance)),
    );
    fc.assert(
      fc.property(any, (probability) => {
        expect(probabilityInWords(probability)).not.toMatch(/(?<![\d.])(100|0)(\.0)?\u00a0%/);
      }),
    );
  });
});

describe('a verdict', () => {
  const said = (verdict: Verdict, probability: number) => verdictInWords({ probability, verdict });

  it('of in tells the chance that it meets the drawing', () => {
    expect(said('in', 0.984)).toBe('The chance that it meets the drawing is 98\u00a0%.');
  });

  it('of out tells the chance that it does not', () => {
    expect(said('out', 0.03)).toBe('The chance that it is outside the drawing is 97\u00a0%.');
    expect(said('out', 1e-20)).toBe(
      'The chance that it is outside the drawing is more than 99.9\u00a0%.',
    );
  });

  it('too close to call never stands beside a chance that would have made it one', () => {
    // 94.8 % is rounded to the level of the decision rule otherwise.
    expect(chanceInWords({ probability: 0.9484, verdict: 'too close to call' })).toBe(
      '94.8\u00a0%',
    );
    expect(chanceInWords({ probability: 0.0504, verdict: 'too close to call' })).toBe('5.1\u00a0%');
    expect(chanceInWords({ probability: 0.9504, verdict: 'in' })).toBe('95\u00a0%');
  });

  it('that cannot be given says so, and what helps', () => {
    expect(said('too close to call', 0.7)).toBe(
      'The chance that it meets the drawing is 70.0\u00a0%: not enough to say so, nor to deny it.',
    );
  });

  it('that cannot be given is never said to be as sure as it is asked to be', () => {
    expect(said('too close to call', 0.9496)).toMatch(/is 94\.9\u00a0%: not enough/);
    expect(said('too close to call', 0.0504)).toMatch(/is 5\.1\u00a0%: not enough/);
  });

  it('has a heading', () => {
    expect(VERDICT_LABELS).toEqual({
      in: 'In',
      out: 'Out',
      'too close to call': 'Too close to call',
    });
  });
});

describe('what would settle it', () => {
  it('is so many more seatings of each side', () => {
    expect(seatingsInWords(1)).toBe(
      'Once more lifted, seated and read on each side would likely settle it.',
    );
    expect(seatingsInWords(7)).toBe(
      '7 times more lifted, seated and read on each side would likely settle it.',
    );
  });

  it('names the sides that it is about', () => {
    expect(seatingsInWords(1, ['right', 'left'])).toMatch(/read on right and left would/);
    expect(seatingsInWords(2, 'all four')).toMatch(/read on all four sides would/);
  });

  it('is another way of reading where no seatings would', () => {
    expect(seatingsInWords('none')).toMatch(/twenty seatings more would not settle it/);
  });
});

describe('where a part stands', () => {
  const fixed = (verdict: Verdict) => ({ fixed: true, verdict }) as Finding;
  const open = { fixed: false } as Finding;

  it('counts what is in, and names what is not', () => {
    expect(standsInWords([fixed('in'), fixed('in')])).toBe('2 of 2 are in');
    expect(standsInWords([fixed('in'), fixed('out'), fixed('too close to call'), open])).toBe(
      '1 of 4 is in, 1 out, 1 too close to call, 1 not fixed by the readings',
    );
    expect(standsInWords([])).toBe('0 of 0 are in');
    // A form that is still being simulated may turn the verdict of the plane.
    const pending = { ...fixed('in'), formPoints: [{}] } as unknown as Finding;
    expect(standsInWords([fixed('in'), pending])).toBe('1 of 2 is in, 1 being worked out');
  });
});
