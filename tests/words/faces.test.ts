import { describe, expect, it } from 'vitest';
import type { Face } from '../../src/core/part/faces';
import {
  faceLabel,
  highSideName,
  lowSideName,
  pairName,
  requirementName,
} from '../../src/words/faces';

describe('the high side', () => {
  it.each<[Face, string, string]>([
    ['right', 'right edge', 'left edge'],
    ['left', 'left edge', 'right edge'],
    ['back', 'back edge', 'front edge'],
    ['front', 'front edge', 'back edge'],
    ['top', 'top edge', 'bottom edge'],
    ['bottom', 'bottom edge', 'top edge'],
  ])('towards the %s is the %s, and the low one the %s', (side, high, low) => {
    expect(highSideName([side])).toBe(high);
    expect(lowSideName([side])).toBe(low);
  });

  it.each<[Face, Face, string, string]>([
    ['back', 'left', 'back left corner', 'front right corner'],
    ['back', 'right', 'back right corner', 'front left corner'],
    ['front', 'left', 'front left corner', 'back right corner'],
    ['front', 'right', 'front right corner', 'back left corner'],
    ['top', 'left', 'top left corner', 'bottom right corner'],
    ['top', 'right', 'top right corner', 'bottom left corner'],
    ['bottom', 'left', 'bottom left corner', 'top right corner'],
    ['bottom', 'right', 'bottom right corner', 'top left corner'],
    ['top', 'back', 'top back corner', 'bottom front corner'],
    ['top', 'front', 'top front corner', 'bottom back corner'],
    ['bottom', 'back', 'bottom back corner', 'top front corner'],
    ['bottom', 'front', 'bottom front corner', 'top back corner'],
  ])('towards %s and %s, in either order, is the %s, and the low one the %s', (a, b, high, low) => {
    for (const sides of [
      [a, b],
      [b, a],
    ]) {
      expect(highSideName(sides)).toBe(high);
      expect(lowSideName(sides)).toBe(low);
    }
  });
});

describe('names', () => {
  it('of a face as a sentence begins, and of a pair', () => {
    expect(faceLabel('bottom')).toBe('Bottom');
    expect(pairName(['back', 'front'])).toBe('back and front');
  });

  it('of a requirement: square to a neighbour, parallel to the opposite', () => {
    expect(requirementName({ face: 'right', datum: 'bottom' })).toBe('Right square to bottom');
    expect(requirementName({ face: 'top', datum: 'bottom' })).toBe('Top parallel to bottom');
  });
});
