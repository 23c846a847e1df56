import { expect, it } from 'vitest';
import { millimetresForDrawing } from '../../src/entry/for-drawing';
import { inch, micro, mm } from './support/typed';

it('a drawing follows what is typed in any unit, in mm', () => {
  expect([mm('80'), inch('2'), micro('500')].map(millimetresForDrawing)).toEqual([80, 50.8, 0.5]);
});

it('it has nothing to follow while there is no number yet', () => {
  expect([mm(''), mm('-'), mm('8..')].map(millimetresForDrawing)).toEqual([
    undefined,
    undefined,
    undefined,
  ]);
});
