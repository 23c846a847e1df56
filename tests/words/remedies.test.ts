import { describe, expect, it } from 'vitest';
import type { Remedy } from '../../src/core/inspection/candidates/candidate';
import type { Face } from '../../src/core/part/faces';
import { atOneHeightInWords, remediesInWords } from '../../src/words/remedies';

const SWING: Remedy = { kind: 'swing to the other side', setting: 's', face: 'left' };
const TRAVERSE: Remedy = { kind: 'traverse the other side', column: 'c', face: 'front' };
const COMPARE: Remedy = { kind: 'compare both sides', faces: ['right', 'left'], base: 'bottom' };
const HEIGHTS: Remedy = { kind: 'micrometer at two heights', face: 'back', base: 'bottom' };
const ASSUME: Remedy = { kind: 'assume parallel', face: 'right' };
const again = (...faces: readonly Face[]): Remedy => {
  return { kind: 'seat again and traverse', column: 'c', faces, base: 'bottom' };
};
const corner = (side: 'back' | 'front', end: 'left' | 'right'): Remedy => {
  return { kind: 'micrometer at a corner', face: 'top', towards: [end, side] };
};

describe('one piece of work', () => {
  it.each([
    [SWING, 'Swing the same setting round and read the left side.'],
    [TRAVERSE, 'Run the same column up the front side.'],
    [COMPARE, 'Read right and left with one setting.'],
    [HEIGHTS, 'Measure between back and front with a micrometer at two heights.'],
    [ASSUME, 'Say within what right and left are parallel.'],
    [
      again('right', 'left'),
      'Lift the block, seat it on its bottom again, and run the same column up the right and the left once more.',
    ],
    [
      again('left'),
      'Lift the block, seat it on its bottom again, and run the same column up the left side once more.',
    ],
  ])('%o', (remedy, sentence) => {
    expect(remediesInWords([[remedy]])).toEqual([sentence]);
  });

  it('at a corner is named as the corners are elsewhere, and one stands for all that would do', () => {
    expect(remediesInWords([[corner('back', 'left')], [corner('front', 'right')]])).toEqual([
      'Measure between top and bottom with the micrometer at one more place, near the back left corner.',
    ]);
  });
});

describe('several pieces of work', () => {
  it('that are all needed are joined by and', () => {
    expect(remediesInWords([[COMPARE, ASSUME]])).toEqual([
      'Read right and left with one setting, and say within what right and left are parallel.',
    ]);
  });

  it('of which any will do are told one by one', () => {
    expect(remediesInWords([[HEIGHTS], [ASSUME]])).toEqual([
      'Measure between back and front with a micrometer at two heights.',
      'Say within what right and left are parallel.',
    ]);
  });

  it('can be sets to choose from', () => {
    expect(
      remediesInWords([
        [SWING, HEIGHTS],
        [SWING, ASSUME],
      ]),
    ).toEqual([
      'Swing the same setting round and read the left side, and measure between back and front with a micrometer at two heights.',
      'Swing the same setting round and read the left side, and say within what right and left are parallel.',
    ]);
  });

  it.each([
    [2, 'two more'],
    [3, 'three'],
  ])('at %d corners are only counted, as any will do', (count, word) => {
    const corners = [corner('back', 'left'), corner('back', 'right'), corner('front', 'left')];
    expect(remediesInWords([corners.slice(0, count), corners.slice(-count)])).toEqual([
      `Measure between top and bottom with the micrometer at ${word} places, near the corners and not all in one line, or pass an indicator over the face.`,
    ]);
  });
});

it('where no single further reading helps, it says so', () => {
  expect(remediesInWords([])).toEqual(['No single further reading fixes it: begin a new setup.']);
});

it('a micrometer at one height is told which, and where to go', () => {
  expect(atOneHeightInWords({ text: '5', unit: 'mm' })).toBe(
    'The micrometer was at one height only, 5 mm up: measure one of its places near the other end of the face, and put that height in.',
  );
});
