import { describe, expect, it } from 'vitest';
import { type Face, pairsAround } from '../../src/core/part/faces';
import { leanInWords, taperInWords } from '../../src/words/leans';

const estimate = (value: number, standard = 0.001) => ({
  value,
  standard,
  degreesOfFreedom: Number.POSITIVE_INFINITY,
});

/** For each base, the end that is up when the part stands on it. */
const UP: readonly [Face, string][] = [
  ['bottom', 'top'],
  ['top', 'bottom'],
  ['right', 'left'],
  ['left', 'right'],
  ['back', 'front'],
  ['front', 'back'],
];

const LABELS: Readonly<Record<Face, string>> = {
  right: 'Right',
  left: 'Left',
  back: 'Back',
  front: 'Front',
  top: 'Top',
  bottom: 'Bottom',
};

describe.each(UP)('standing on the %s', (base, up) => {
  it.each(pairsAround(base).flat())(`the %s leans out or in at the ${up}, or is square`, (face) => {
    const label = LABELS[face];
    expect(leanInWords(face, base, estimate(0.02))).toBe(`${label} leans out at the ${up}`);
    expect(leanInWords(face, base, estimate(-0.02))).toBe(`${label} leans in at the ${up}`);
    expect(leanInWords(face, base, estimate(0))).toBe(`${label} stands square`);
  });

  it(`is thicker towards the ${up}, towards the base or nowhere`, () => {
    expect(taperInWords(base, estimate(0.02))).toBe(`Thicker towards the ${up}`);
    expect(taperInWords(base, estimate(-0.02))).toBe(`Thicker towards the ${base}`);
    expect(taperInWords(base, estimate(0))).toBe('No taper');
  });
});

it('a lean too small to be shown is none, the least that can be shown is one', () => {
  // 5e-6 µm/mm is 0.005 µm over a metre.
  expect(leanInWords('right', 'bottom', estimate(4e-6))).toBe('Right stands square');
  expect(leanInWords('right', 'bottom', estimate(-6e-6))).toBe('Right leans in at the top');
  expect(taperInWords('bottom', estimate(-4e-6))).toBe('No taper');
});
