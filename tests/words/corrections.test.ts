import { describe, expect, it } from 'vitest';
import type { CorrectionOption } from '../../src/core/correction/options';
import {
  correctionInWords,
  effectInWords,
  pressInWords,
  sizeInWords,
  workedFaceView,
} from '../../src/words/corrections';
import { optionOn } from './support/worked';

// Right is obtuse to the bottom by 3/148 µm/mm.
describe('working the bottom, 60 mm from left to right', () => {
  const option = optionOn('bottom');

  it('takes 60 · 3/148 = 1.216 µm off the left edge', () => {
    expect(correctionInWords(option, 'µm')).toBe(
      'The left edge of the bottom is high by 1.22 µm. Take that off there, feathering to nothing at the right edge.',
    );
    expect(correctionInWords(option, 'tenths')).toContain('high by 0.48 tenths.');
  });

  it('is pressed a third of the 60 mm from there', () => {
    expect(pressInWords(option, 'mm')).toBe('Press 20 mm from the left edge, on the middle line.');
    expect(pressInWords(option, 'in')).toContain('0.79 in ');
  });

  it('costs the size behind it as much', () => {
    expect(sizeInWords(option, 'µm')).toBe('The size bottom to top loses up to 1.22 µm.');
  });

  it('takes the error of 90 · 3/148 = 1.824 µm away on both sides', () => {
    expect(option.effects.map((effect) => effectInWords(effect, 'µm'))).toEqual([
      'Right square to bottom: 1.82 µm becomes 0.00 µm, in',
      'Left square to bottom: 1.82 µm becomes 0.00 µm, in',
    ]);
  });
});

describe('working the right, 90 mm from bottom to top', () => {
  const option = optionOn('right');

  it('takes 90 · 3/148 = 1.824 µm off the top edge', () => {
    expect(correctionInWords(option, 'µm')).toBe(
      'The top edge of the right is high by 1.82 µm. Take that off there, feathering to nothing at the bottom edge.',
    );
  });

  it('is pressed 30 mm from there', () => {
    expect(pressInWords(option, 'mm')).toBe('Press 30 mm from the top edge, on the middle line.');
  });

  it('leaves the left as it was', () => {
    expect(option.effects.map((effect) => effectInWords(effect, 'µm'))[1]).toMatch(
      /^Left square to bottom: 1.82 µm becomes 1.82 µm, /,
    );
  });
});

it('a high corner is pressed at distances in from both of its edges', () => {
  const option: CorrectionOption = {
    ...optionOn('bottom'),
    highSide: ['left', 'back'],
    pressDistances: [
      { from: 'left', distance: 25 },
      { from: 'back', distance: 50 / 3 },
    ],
  };
  expect(pressInWords(option, 'mm')).toBe(
    'Press 25 mm from the left edge and 16.7 mm from the back edge.',
  );
  expect(correctionInWords(option, 'µm')).toMatch(
    /^The back left corner of the bottom .* at the front right corner\.$/,
  );
});

it('the drawing of the cut says which face lies down', () => {
  expect(workedFaceView('right')).toBe(
    'Seen from above, through the part: its right lies on the paper, its left looks up at you.',
  );
});
