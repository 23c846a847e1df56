import { expect, it } from 'vitest';
import type { Face } from '../../src/core/part/faces';
import { typedRows } from '../../src/entry/typed-rows';
import { assumption, micrometerSetup, noseSetup } from './support/setups';
import { micro } from './support/typed';

it('names everything that was typed, and no two things alike', () => {
  const rows = typedRows(
    [
      noseSetup({ right: '34', left: '31' }),
      noseSetup({ right: '35', left: '32' }),
      assumption(micro('1')),
    ],
    'bottom',
  );
  expect(rows.map(({ name, typed }) => `${name}: ${typed.text}`)).toEqual([
    'Nose height, right and left: 6',
    'Indicator height, right and left: 80',
    'Right side: 34',
    'Left side: 31',
    'Nose height, right and left (2): 6',
    'Indicator height, right and left (2): 80',
    'Right side (2): 35',
    'Left side (2): 32',
    'right and left taken as parallel: 1',
  ]);
});

it('names places as their fields are: up from the datum, or in from an edge of a face that lies', () => {
  const namesOf = (faces: readonly [Face, Face]) =>
    typedRows([micrometerSetup([['5', '20', '60']], faces)], 'bottom').map(({ name }) => name);
  expect(namesOf(['right', 'left'])).toEqual([
    'Micrometer right to left, place 1',
    'Micrometer right to left, place 1: up from bottom',
    'Micrometer right to left, place 1: in from front',
  ]);
  expect(namesOf(['top', 'bottom']).slice(1)).toEqual([
    'Micrometer top to bottom, place 1: in from front',
    'Micrometer top to bottom, place 1: in from left',
  ]);
});
