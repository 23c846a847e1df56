import { expect, it } from 'vitest';
import { looksLikeThickness } from '../../src/entry/place-or-thickness';
import type { TypedLength } from '../../src/entry/typed-length';

const BLOCK = { size: { x: 80, y: 50, z: 60 } };
const mm = (text: string): TypedLength => ({ text, unit: 'mm' });

it('a place that is as fine and as large as the thickness looks like one', () => {
  expect(looksLikeThickness(mm('50.001'), 'front', BLOCK)).toBe(true);
  expect(looksLikeThickness(mm('49.987'), 'back', BLOCK)).toBe(true);
  expect(looksLikeThickness({ text: '1.96854', unit: 'in' }, 'front', BLOCK)).toBe(true);
});

it('a place as places are given looks like none, nor one far from the thickness', () => {
  for (const text of ['50', '50.0', '49.9', '50.2', '55.001', '', '5x']) {
    expect(looksLikeThickness(mm(text), 'front', BLOCK), text).toBe(false);
  }
  expect(looksLikeThickness(mm('50.001'), 'right', BLOCK)).toBe(false);
  // 1 3/4 in, as thick as the block is and no finer.
  const inch = { size: { x: 80, y: 44.45, z: 60 } };
  expect(looksLikeThickness({ text: '1.75', unit: 'in' }, 'front', inch)).toBe(false);
});
