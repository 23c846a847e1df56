import { expect, it } from 'vitest';
import { typedRows } from '../../src/entry/typed-rows';
import { assumption, noseSetup } from './support/setups';
import { micro } from './support/typed';

it('names everything that was typed, and no two things alike', () => {
  const rows = typedRows([
    noseSetup({ right: '34', left: '31' }),
    noseSetup({ right: '35', left: '32' }),
    assumption(micro('1')),
  ]);
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
