import { describe, expect, it } from 'vitest';
import { oneHeightOf } from '../../src/entry/one-height';
import type { MicrometerSetup } from '../../src/entry/setup-entry';
import type { TypedLength } from '../../src/entry/typed-length';
import { inch, mm } from './support/typed';

function micrometer(
  ...places: readonly (readonly [up: TypedLength, thickness: string])[]
): MicrometerSetup {
  return {
    kind: 'micrometer',
    id: 'm',
    faces: ['right', 'left'],
    places: places.map(([up, thickness], index) => ({
      ...{ id: `p${index}`, up, across: mm(''), thickness: mm(thickness) },
    })),
  };
}

describe('the one height of a micrometer', () => {
  it('is that of all its places, in whatever unit each was typed', () => {
    const setup = micrometer([inch('1'), '60'], [mm('25.4'), '60.001']);
    expect(oneHeightOf([setup], 'left')).toEqual(inch('1'));
  });

  it.each([
    ['two heights', micrometer([mm('5'), '60'], [mm('85'), '60.001'])],
    ['one place alone', micrometer([mm('5'), '60'])],
    ['a second that is not read yet', micrometer([mm('5'), '60'], [mm('5'), ''])],
    ['heights that cannot be read', micrometer([mm('?'), '60'], [mm('?'), '60'])],
  ])('is none with %s', (_, setup) => {
    expect(oneHeightOf([setup], 'right')).toBeUndefined();
  });

  it('is none of another pair', () => {
    const setup = micrometer([mm('5'), '60'], [mm('5'), '60.001']);
    expect(oneHeightOf([setup], 'front')).toBeUndefined();
  });
});
