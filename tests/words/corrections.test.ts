import { describe, expect, it } from 'vitest';
import type { PlanStep } from '../../src/core/correction/plan/plan';
import {
  correctionInWords,
  pressInWords,
  sizeInWords,
  workedFaceView,
} from '../../src/words/corrections';
import { workedStep } from './support/worked';

// Right is obtuse to the bottom by 3/148 µm/mm.
describe('working the bottom, 60 mm from left to right', () => {
  const step = workedStep('bottom');

  it('takes 60 · 3/148 = 1.216 µm off the left edge', () => {
    expect(correctionInWords(step, 'µm')).toBe(
      'The left edge of the bottom is high: take 1.22 µm off there, feathering to nothing at the right edge.',
    );
    expect(correctionInWords(step, 'tenths')).toContain('take 0.48 tenths off there,');
  });

  it('is pressed a third of the 60 mm from there', () => {
    expect(pressInWords(step, 'mm')).toBe('Press 20 mm from the left edge, on the middle line.');
    expect(pressInWords(step, 'in')).toContain('0.79 in ');
  });

  it('costs the size behind it as much, and its being parallel', () => {
    expect(sizeInWords(step, 'µm')).toBe(
      'The size bottom to top loses up to 1.22 µm, and the taper bottom to top changes by as much.',
    );
    expect(sizeInWords(step, 'tenths')).toContain('loses up to 0.48 tenths,');
  });
});

describe('working the right, 90 mm from bottom to top', () => {
  const step = workedStep('right');

  it('takes 90 · 3/148 = 1.824 µm off the top edge', () => {
    expect(correctionInWords(step, 'µm')).toBe(
      'The top edge of the right is high: take 1.82 µm off there, feathering to nothing at the bottom edge.',
    );
  });

  it('is pressed 30 mm from there', () => {
    expect(pressInWords(step, 'mm')).toBe('Press 30 mm from the top edge, on the middle line.');
  });

  it('costs the width as much', () => {
    expect(sizeInWords(step, 'µm')).toMatch(/^The size right to left loses up to 1\.82 µm, /);
  });
});

it('a high corner is pressed at distances in from both of its edges', () => {
  const step: PlanStep = {
    ...workedStep('bottom'),
    highSide: ['left', 'back'],
    pressDistances: [
      { from: 'left', distance: 25 },
      { from: 'back', distance: 50 / 3 },
    ],
  };
  expect(pressInWords(step, 'mm')).toBe(
    'Press 25 mm from the left edge and 16.7 mm from the back edge.',
  );
  expect(correctionInWords(step, 'µm')).toMatch(
    /^The back left corner of the bottom .* at the front right corner\.$/,
  );
});

it('the drawing of the cut says which face lies down', () => {
  expect(workedFaceView('right')).toBe(
    'Seen from above, through the part: its right is down on the paper, its left faces you.',
  );
});
