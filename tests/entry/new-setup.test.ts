import { describe, expect, it } from 'vitest';
import { newPlace, newSetup, withOneMorePlace } from '../../src/entry/new-setup';
import type { SetupKind } from '../../src/entry/setup-entry';
import { countedIds } from './support/ids';
import { inch, micro, mm, tenths } from './support/typed';

const METRIC = { size: 'mm', reading: 'µm' } as const;

const begin = (kind: SetupKind) => newSetup(kind, ['back', 'front'], 'left', METRIC, countedIds());

describe('a new setup', () => {
  it('of the nose comparator has an empty placing for each face', () => {
    expect(begin('nose comparator')).toEqual({
      kind: 'nose comparator',
      id: 'id 1',
      faces: ['back', 'front'],
      base: 'left',
      noseHeight: mm(''),
      indicatorHeight: mm(''),
      placings: [
        { id: 'id 2', face: 'back', reading: micro('') },
        { id: 'id 3', face: 'front', reading: micro('') },
      ],
    });
  });

  it('of the column has two heights, and a reading of each on both faces', () => {
    const readings = { 'id 2': micro(''), 'id 3': micro('') };
    expect(begin('column')).toEqual({
      kind: 'column',
      id: 'id 1',
      faces: ['back', 'front'],
      base: 'left',
      heights: [
        { id: 'id 2', height: mm('') },
        { id: 'id 3', height: mm('') },
      ],
      placings: [
        { id: 'id 4', face: 'back', readings },
        { id: 'id 5', face: 'front', readings },
      ],
    });
  });

  it('of the micrometer has two places', () => {
    const empty = { up: mm(''), across: mm(''), thickness: mm('') };
    expect(begin('micrometer')).toEqual({
      kind: 'micrometer',
      id: 'id 1',
      faces: ['back', 'front'],
      places: [
        { id: 'id 2', ...empty },
        { id: 'id 3', ...empty },
      ],
    });
  });

  it('of an assumption asks for a small length', () => {
    const faces = ['back', 'front'];
    expect(begin('assumed parallel')).toEqual({
      ...{ kind: 'assumed parallel', id: 'id 1', faces, within: micro('') },
    });
  });

  it('begins in the units of the shop', () => {
    const units = { size: 'in', reading: 'thou' } as const;
    const begun = (kind: SetupKind) =>
      newSetup(kind, ['right', 'left'], 'top', units, countedIds());
    expect(begun('nose comparator')).toMatchObject({
      noseHeight: inch(''),
      placings: [{ reading: { unit: 'thou' } }, { reading: { unit: 'thou' } }],
    });
    expect(begun('assumed parallel')).toMatchObject({ within: tenths('') });
  });
});

it('one more place for the micrometer is empty and has an id of its own', () => {
  const newId = countedIds();
  const [one, other] = [newPlace({ size: 'in' }, newId), newPlace({ size: 'in' }, newId)];
  expect(one).toEqual({ id: 'id 1', up: inch(''), across: inch(''), thickness: inch('') });
  expect(other.id).toBe('id 2');
});

describe('a place more', () => {
  it('is the third of a micrometer, empty and in its unit', () => {
    const inches = { size: 'in', reading: 'tenths' } as const;
    const begun = newSetup('micrometer', ['back', 'front'], 'left', inches, countedIds());
    const more = withOneMorePlace(begun, () => 'third');
    expect(more).toEqual({
      ...begun,
      places: [
        ...(begun.kind === 'micrometer' ? begun.places : []),
        newPlace(inches, () => 'third'),
      ],
    });
  });

  it('is none of any other setup', () => {
    const map = begin('face map');
    expect(withOneMorePlace(map, () => 'third')).toBe(map);
  });
});
