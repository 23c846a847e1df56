import { describe, expect, it } from 'vitest';
import type { EquationCheck } from '../../src/core/adjustment/checks';
import { inspect } from '../../src/core/inspection/inspect';
import type { NextReading } from '../../src/core/inspection/next-reading';
import { DEFAULT_KIT } from '../../src/core/readings/kit';
import type { Reading } from '../../src/core/readings/reading';
import {
  crownInWords,
  fitInWords,
  ifThisInWords,
  nextInWords,
  oneOfSuspectsInWords,
  orSlipInWords,
  surerInWords,
  suspectInWords,
  uncheckedInWords,
} from '../../src/words/checks';
import { micrometer, traverse } from '../core/support/readings';
import { partWith } from '../core/support/worked-block';

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
    const said = suspectInWords('Right side', check(blunder), unit);
    expect(said.startsWith(begins)).toBe(true);
    expect(said.endsWith('Read it again, or leave it out.')).toBe(true);
    expect(said).not.toContain('swapped');
  });

  it('is told to be one of several that cannot be told apart, each by how much', () => {
    expect(oneOfSuspectsInWords(2)).toMatch(
      /^One of these 2 is off; they cannot tell which\. A chip/,
    );
    expect(oneOfSuspectsInWords(4, true)).toMatch(/^Even so, one of these 4 is off/);
    expect(ifThisInWords('Left side', check(3), 'µm')).toBe('Left side looks 3.00 µm high.');
  });

  it('is asked about two digits that were swapped', () => {
    const asked = 'looks 45.00 µm high. Two digits swapped? 30.016 would fit.';
    expect(ifThisInWords('Place 3', check(45), 'µm', '30.016')).toBe(`Place 3 ${asked}`);
    expect(suspectInWords('Place 3', check(45), 'µm', false, '30.016')).toMatch(
      /^Place 3 looks 45\.00 µm high\. Two digits swapped\? 30\.016 would fit\. A chip/,
    );
  });
});

describe('a crown', () => {
  const up = (values: Readonly<Record<number, number>>) => traverse('right', values);
  /** Heights known for certain: the doubt is that of the indicator, 0.408 µm. */
  const crownOf = (readings: readonly Reading[]) =>
    inspect(partWith([]), readings, { ...DEFAULT_KIT, heightSetting: 0 }, 0.95).crowns[0]!;

  it('is told with its ±, which is twice σ·√(1 + 1/4 + 1/4) = 0.5 µm, and the slip it may be', () => {
    const crown = crownOf(up({ 10: 4, 45: 29.5, 80: 31 }));
    expect(crownInWords(crown, 'µm', 'mm')).toBe(
      'These 3 readings of the right fit a face that is crowned by 12.00 ± 1.00 µm from bottom to top, over 70 mm, as well as a slip in one of them. A place more in between would tell. A column that is not straight would look the same.',
    );
    expect(orSlipInWords('Right at 45', crown.orSlip[1]!, 'µm')).toBe(
      'Or a slip: Right at 45 looks 12.00 µm high. Read it again, or leave it out.',
    );
  });

  it('that is a hollow is told so, in the units of the shop', () => {
    const crown = crownOf(up({ 10: 4, 45: 17.5 - 25.4, 80: 31 }));
    expect(crownInWords(crown, 'tenths', 'in')).toContain(
      'is hollow by 10.00 ± 0.39 tenths from bottom to top, over 2.7559 in, as well as',
    );
  });

  it('that explains clearly more than a slip is said to', () => {
    const bow = [10, 20, 30, 40, 50, 60, 70, 80].map((height) => {
      return [height, 9 * (1 - ((height - 45) / 35) ** 2)] as const;
    });
    expect(crownInWords(crownOf(up(Object.fromEntries(bow))), 'µm', 'mm')).toMatch(
      /^These 8 readings .* over 70 mm, better than a slip in any one of them\. A column/,
    );
  });

  it('seen with the micrometer is one of both faces', () => {
    const thick = [-40, -20, 0, 20, 40].map((z) =>
      micrometer('left', { z }, 6 * (1 - (z / 40) ** 2)),
    );
    expect(crownInWords(crownOf(thick), 'µm', 'mm')).toMatch(
      /^These 5 micrometer readings over right and left fit faces that together are crowned by 6\.00 ± .* from bottom to top, over 80 mm, [^.]*\.( A place more in between would tell\.)?$/,
    );
  });

  it('does not silence a slip that it does not explain', () => {
    const check = { reading: 'r', residual: 2, redundancy: 0.5, standardised: 5, blunder: 4 };
    expect(suspectInWords('Left side', check, 'µm', true)).toMatch(
      /^Even so, Left side looks 4\.00 µm high\. A chip/,
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
  const next = (now: number, then: number, hasForm = false): NextReading => {
    return { requirement: 'r', remedy, now, then, hasForm };
  };

  it('says what to do, and ± for about 95 %: twice the standard uncertainty', () => {
    expect(nextInWords(next(1, 0.5), Number.POSITIVE_INFINITY, 'µm')).toBe(
      'To be surer: lift the block, seat it again, and read the left side with the same setting. The ± goes from 2.00 to about 1.00 µm.',
    );
  });

  it('asks for both sides again where they have been read already', () => {
    const remedy = {
      kind: 'compare both sides',
      faces: ['right', 'left'],
      base: 'bottom',
    } as const;
    expect(surerInWords(remedy)).toBe(
      'To be surer: read right and left again, both with one setting',
    );
  });

  it('with form speaks of the plane alone, which is all that was reckoned', () => {
    expect(nextInWords(next(1, 0.5, true), Number.POSITIVE_INFINITY, 'µm')).toMatch(
      /\. The ± of its plane, form left out, goes from 2\.00 to about 1\.00 µm\.$/,
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
