import { describe, expect, it } from 'vitest';
import type { FixedFlatness } from '../../src/core/inspection/flatness';
import { flattenInWords, lackInWords, mappedInWords } from '../../src/words/flatness';

const MAP = 'Map the bottom on jacks, at four places or more that spread over it; nine are better.';

describe('what is missing', () => {
  it.each([
    ['no map', MAP],
    ['few places', `Any three places lie in a plane. ${MAP}`],
    ['on a line', `All places lie on one line. ${MAP}`],
  ] as const)('with %s', (kind, sentence) => {
    expect(lackInWords({ kind, thickness: false }, 'bottom', 'µm')).toBe(sentence);
    expect(lackInWords({ kind, thickness: true }, 'bottom', 'µm')).toMatch(/shows the thickness/);
  });

  it('with places still to be read', () => {
    const lack = { kind: 'places to read', places: 4, width: 2.14, unread: 5 } as const;
    expect(lackInWords(lack, 'bottom', 'µm')).toBe(
      'Read at 4 of 9 places: 2.14 µm out of flat so far, and what is still empty can only add to it. Read the other places, or remove under ‘Where the places are’ what is not to be read.',
    );
  });
});

const FOUND: FixedFlatness = {
  fixed: true,
  requirement: { id: 'flat', face: 'bottom', tolerance: 3 },
  zone: { width: 4.2, standard: 0.5, degreesOfFreedom: 1e9, contributions: [], terms: [] },
  ...{ probability: 0.01, verdict: 'out', places: 9, unread: 0, maps: 1, high: ['a'] },
  spans: [{ read: 60, face: 60 }],
};

describe('what was found', () => {
  it('says what was read of the face and what may be missed', () => {
    expect(mappedInWords(FOUND, 'mm')).toBe(
      'Read at 9 places. What stands up or dips between and beyond them is not seen.',
    );
    const part = { ...FOUND, places: 4, maps: 2, spans: [{ read: 48, face: 60 }] };
    expect(mappedInWords(part, 'mm')).toBe(
      'The widest of 2 maps, with 4 places over 48 of 60 mm. What stands up or dips between and beyond them is not seen: nine places or more see more.',
    );
    expect(mappedInWords({ ...FOUND, places: 4, unread: 5 }, 'mm')).toMatch(
      /^Read at 4 places, 5 still to be read, which can only add to it\. /,
    );
  });

  it('says what has to come off where, and to map it again first where it is not sure', () => {
    const out = flattenInWords(FOUND, ['Bottom, place 5'], 'µm');
    expect(out).toContain('out of flat by 4.20 µm');
    expect(out).toContain('stands highest: Bottom, place 5.');
    expect(out).not.toContain('not sure');
    const close = { ...FOUND, verdict: 'too close to call' } as const;
    expect(flattenInWords(close, ['Bottom, place 5'], 'µm')).toMatch(
      /not sure: map it again first/,
    );
    const lone = { reading: 'five', without: 0.5, off: 4 };
    expect(flattenInWords({ ...close, lone }, ['Bottom, place 5'], 'µm')).toMatch(
      /map it again after\. But one place stands off by itself: read that once more first\.$/,
    );
  });
});
