import { describe, expect, it } from 'vitest';
import { isUprightPair, pairsToRead, samePair } from '../../src/entry/pairs-to-read';
import { asked } from './support/part';

describe('the pairs that a drawing asks to have read', () => {
  it('are all round the datum while it asks nothing', () => {
    expect(pairsToRead({ datum: 'bottom', requirements: [] })).toEqual([
      { faces: ['right', 'left'], base: 'bottom' },
      { faces: ['back', 'front'], base: 'bottom' },
    ]);
    expect(pairsToRead({ datum: 'left', requirements: [] })).toEqual([
      { faces: ['back', 'front'], base: 'left' },
      { faces: ['top', 'bottom'], base: 'left' },
    ]);
  });

  it('are each there once, in the order of the drawing, named by the face asked about first', () => {
    const requirements = [
      asked('front', 'bottom'),
      asked('left', 'bottom'),
      asked('right', 'bottom'),
      asked('back', 'bottom'),
    ];
    expect(pairsToRead({ datum: 'bottom', requirements })).toEqual([
      { faces: ['front', 'back'], base: 'bottom' },
      { faces: ['left', 'right'], base: 'bottom' },
    ]);
  });

  it('are read once on each base', () => {
    const requirements = [asked('right', 'bottom'), asked('left', 'top'), asked('back', 'right')];
    expect(pairsToRead({ datum: 'bottom', requirements })).toEqual([
      { faces: ['right', 'left'], base: 'bottom' },
      { faces: ['left', 'right'], base: 'top' },
      { faces: ['back', 'front'], base: 'right' },
    ]);
  });

  it('stand on the datum of the part where the two faces are to be parallel', () => {
    const requirements = [asked('right', 'left'), asked('top', 'bottom')];
    const pairs = pairsToRead({ datum: 'bottom', requirements });
    expect(pairs).toEqual([
      { faces: ['right', 'left'], base: 'bottom' },
      { faces: ['top', 'bottom'], base: 'bottom' },
    ]);
    expect(pairs.map(isUprightPair)).toEqual([true, false]);
  });

  it('do not come from a face that is its own datum', () => {
    expect(pairsToRead({ datum: 'bottom', requirements: [asked('back', 'back')] })).toEqual(
      pairsToRead({ datum: 'bottom', requirements: [] }),
    );
  });
});

it('two pairs are the same in either order, but not on another base', () => {
  const pair = { faces: ['right', 'left'], base: 'bottom' } as const;
  expect(samePair(pair, { faces: ['left', 'right'], base: 'bottom' })).toBe(true);
  expect(samePair(pair, { faces: ['right', 'left'], base: 'top' })).toBe(false);
  expect(samePair(pair, { faces: ['back', 'front'], base: 'bottom' })).toBe(false);
});
