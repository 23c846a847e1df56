import { expect, it } from 'vitest';
import type { SetupEntry } from '../../src/entry/setup-entry';
import { workingNames } from '../../src/words/working-names';

const mm = (text: string) => ({ text, unit: 'mm' as const });
const SIZES = { x: mm('60'), y: mm(' 40.000 '), z: { text: '3.5', unit: 'in' as const } };

const micrometer = (face: 'right' | 'back' | 'top', opposite: 'left' | 'front' | 'bottom') =>
  ({
    ...{ kind: 'micrometer', id: 'm', faces: [face, opposite] },
    places: [{ id: 'p', up: mm('5'), across: mm(''), thickness: mm('60.001') }],
  }) satisfies SetupEntry;

it.each([
  [micrometer('right', 'left'), 'Micrometer right to left, place 1, above 60 mm'],
  [micrometer('back', 'front'), 'Micrometer back to front, place 1, above 40.000 mm'],
  [micrometer('top', 'bottom'), 'Micrometer top to bottom, place 1, above 3.5 in'],
] as const)('a thickness says what it is counted from: %#', (setup, name) => {
  expect(workingNames([setup], SIZES).get('p')).toBe(name);
});
