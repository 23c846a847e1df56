import { beforeEach, describe, expect, it } from 'vitest';
import type { SetupEntry } from '../../src/entry/setup-entry';
import { workOut } from '../../src/state/answers';
import { nextToRead } from '../../src/state/next-to-read';
import { narrowsInWords, nextToReadInWords } from '../../src/words/next-to-read';
import { columnSetup, micrometerSetup, noseSetup } from '../entry/support/setups';
import { startAfresh } from './support/fresh';
import { BLOCK, compared } from './support/inspections';

beforeEach(startAfresh);

function said(...setups: readonly SetupEntry[]): string | undefined {
  const inspection = { ...compared('i', '', ''), setups };
  const next = nextToRead(inspection, workOut(inspection, BLOCK));
  return next && nextToReadInWords(next);
}

const THICK = micrometerSetup([
  ['5', '', '60'],
  ['85', '', '60.001'],
]);

describe('the next reading', () => {
  it('fixes both sides where the taper is known', () => {
    expect(said(noseSetup({ left: '' }), THICK)).toBe(
      'Next: Left side. It fixes right square to bottom and 1 more',
    );
  });

  it('shows what the sides differ by where it is not', () => {
    expect(said(noseSetup({ left: '' }))).toBe(
      'Next: Left side. It shows what the sides differ by',
    );
  });

  it('by itself tells nothing yet where it is the first of two', () => {
    expect(said(noseSetup({ right: '', left: '' }), THICK)).toBe('Next: Right side');
  });

  it('may be the last thickness, or the last height of a column', () => {
    const places = micrometerSetup([
      ['5', '', '60'],
      ['85', '', ''],
    ]);
    expect(said(noseSetup(), places)).toBe(
      'Next: Micrometer right to left, place 2. It fixes right square to bottom and 1 more',
    );
    expect(said(columnSetup({ left: ['7', ''] }), THICK)).toBe(
      'Next: Left at 80. It fixes right square to bottom and 1 more',
    );
  });

  it('narrows what is fixed already, and tells how far', () => {
    const places = micrometerSetup([
      ['5', '', '60'],
      ['85', '', '60.001'],
      ['85', '', ''],
    ]);
    const inspection = { ...compared('i', '', ''), setups: [noseSetup(), places] };
    const worked = workOut(inspection, BLOCK);
    const next = nextToRead(inspection, worked);
    const now = worked.answer?.findings[0];
    if (now?.fixed !== true || next === undefined) throw new Error('It is fixed, and goes on');
    expect(next.requirements).toEqual([]);
    const then = next.zones.get(now.requirement.id);
    expect(then!.standard).toBeLessThan(now.zone.standard);
    expect(then!.standard).toBeGreaterThan(now.zone.standard / 2);
    expect(narrowsInWords('Left side', 1.4, 1.2, 'µm')).toBe(
      'Next: Left side. The ± goes to about 1.20 µm',
    );
    expect(narrowsInWords('Left side', 1.4, 1.399, 'µm')).toBe('Next: Left side');
    // Half a seating widens it: that is no reason to read the other half.
    expect(narrowsInWords('Left side', 1.4, 97, 'µm')).toBe('Next: Left side');
  });

  it('is none where all is read, or something is wrong', () => {
    expect(said(noseSetup())).toBeUndefined();
    expect(said(noseSetup({ right: '3x', left: '' }))).toBeUndefined();
  });
});
