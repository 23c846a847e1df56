import { describe, expect, it } from 'vitest';
import type { EquationCheck } from '../../src/core/adjustment/checks';
import type { NextReading } from '../../src/core/inspection/next-reading';
import { fitInWords, nextInWords, suspectInWords, uncheckedInWords } from '../../src/words/checks';

describe('whether the readings agree', () => {
  it('is not said where nothing says anything twice', () => {
    expect(fitInWords(undefined)).toMatch(/^Nothing was read twice, .*a slip would not show\.$/);
  });

  it('is said, with how often good readings are suspected', () => {
    const agree = fitInWords({ probability: 0.4, passes: true });
    expect(agree).toMatch(
      /^They agree as well as their doubt says\. .*one good reading in a thousand/i,
    );
    const disagree = fitInWords({ probability: 0.01, passes: false });
    expect(disagree).toMatch(/^They disagree by more than their doubt says: look for a slip/);
  });
});

describe('a reading that does not agree', () => {
  const check = (blunder: number): EquationCheck => {
    return { reading: 'r', residual: blunder / 2, redundancy: 0.5, standardised: 5, blunder };
  };

  it.each([
    [4.567, 'µm', 'Right side looks 4.57 µm high. '],
    [-4.567, 'µm', 'Right side looks 4.57 µm low. '],
    [-25.4, 'tenths', 'Right side looks 10.00 tenths low. '],
  ] as const)('off by %d µm, in %s', (blunder, unit, begins) => {
    const said = suspectInWords('Right side', check(blunder), 1, unit);
    expect(said.startsWith(begins)).toBe(true);
    expect(said.endsWith('Read it again, or leave it out.')).toBe(true);
    expect(said).not.toContain('not to be told apart');
  });

  it('is told to be one of several that cannot be told apart', () => {
    expect(suspectInWords('Left side', check(3), 2, 'µm')).toContain(
      'It may be this one of 2, not to be told apart. ',
    );
  });
});

it('readings that nothing checks are named', () => {
  expect(uncheckedInWords(['Right side', 'Left side'])).toBe(
    'Nothing checks: Right side; Left side. A slip there would go unseen.',
  );
});

describe('the reading worth taking next', () => {
  const remedy = { kind: 'seat again and read', setting: 's', face: 'left' } as const;
  const next = (now: number, then: number): NextReading => {
    return { requirement: 'r', remedy, now, then };
  };

  it('says what to do, and ± for about 95 %: twice the standard uncertainty', () => {
    expect(nextInWords(next(1, 0.5), Number.POSITIVE_INFINITY, 'µm')).toBe(
      'Worth adding: lift the block, seat it again, and read the left side with the same setting. The ± goes from 2.00 to about 1.00 µm.',
    );
  });

  it('with two degrees of freedom has k = 4.53 (GUM, Table G.2)', () => {
    expect(nextInWords(next(1, 0.5), 2, 'µm')).toMatch(/from 4\.53 to about 2\.26 µm\.$/);
  });

  it('in the unit of the shop', () => {
    expect(nextInWords(next(2.54, 1.27), Number.POSITIVE_INFINITY, 'tenths')).toMatch(
      /from 2\.00 to about 1\.00 tenths\.$/,
    );
  });
});
