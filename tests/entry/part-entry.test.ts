import { describe, expect, it } from 'vitest';
import type { Face } from '../../src/core/part/faces';
import {
  blankPart,
  isUntouched,
  nextFlatness,
  nextRequirement,
  type PartEntry,
} from '../../src/entry/part-entry';
import { countedIds } from './support/ids';
import { asked, ENTRY } from './support/part';
import { inch, micro, mm } from './support/typed';

/** The faces asked about when lines are added one after the other. */
function added(entry: PartEntry, count: number): readonly string[] {
  const newId = countedIds();
  let grown = entry;
  for (let i = 0; i < count; i += 1) {
    grown = { ...grown, requirements: [...grown.requirements, nextRequirement(grown, newId)] };
  }
  return grown.requirements.map(({ id, face, datum }) => `${id}: ${face} to ${datum}`);
}

describe('the next line of a drawing', () => {
  it('goes round the datum, and then across from it', () => {
    expect(added(ENTRY, 5)).toEqual([
      'id 1: right to bottom',
      'id 2: left to bottom',
      'id 3: back to bottom',
      'id 4: front to bottom',
      'id 5: top to bottom',
    ]);
  });

  it.each<Face>(['right', 'left', 'back', 'front', 'top', 'bottom'])(
    'never asks the datum %s about itself, even with all sides taken',
    (datum) => {
      const lines = added({ ...ENTRY, datum }, 6).map((line) => line.replace(/^.*: /, ''));
      expect(new Set(lines).size).toBe(5);
      expect(lines).not.toContain(`${datum} to ${datum}`);
    },
  );

  it('fills the gap that a removed line left', () => {
    const requirements = [asked('right', 'bottom'), asked('back', 'bottom')];
    expect(nextRequirement({ ...ENTRY, requirements }, countedIds()).face).toBe('left');
  });

  it('has the tolerance of the line before, or an empty one in the unit of the sizes', () => {
    const requirements = [
      asked('right', 'bottom', micro('3')),
      asked('left', 'bottom', mm('0.01')),
    ];
    const next = (entry: PartEntry) => nextRequirement(entry, countedIds()).tolerance;
    expect(next({ ...ENTRY, requirements })).toEqual(mm('0.01'));
    expect(next(blankPart('in'))).toEqual(inch(''));
  });
});

it('a new part stands on its bottom, with nothing typed', () => {
  expect(blankPart('mm')).toEqual({
    name: '',
    job: '',
    material: '',
    size: { x: mm(''), y: mm(''), z: mm('') },
    datum: 'bottom',
    requirements: [],
    finished: [],
  });
});

describe('the next face that is to be flat', () => {
  it('is the datum first, then any that none is asked of, with the last tolerance again', () => {
    const newId = countedIds();
    const first = nextFlatness({ ...ENTRY, datum: 'back' }, newId);
    expect(first).toEqual({ id: 'id 1', face: 'back', tolerance: mm('') });
    const flatness = [{ ...first, tolerance: micro('3') }];
    const second = nextFlatness({ ...ENTRY, datum: 'back', flatness }, newId);
    expect(second).toEqual({ id: 'id 2', face: 'right', tolerance: micro('3') });
  });
});

describe('a part that was begun and left', () => {
  it('is untouched with nothing typed, whatever the units', () => {
    expect(isUntouched(blankPart('mm'))).toBe(true);
    expect(isUntouched({ ...blankPart('in'), name: ' ', flatness: [] })).toBe(true);
  });

  it.each([
    { name: 'Block' },
    { job: '12' },
    { material: 'Steel' },
    { size: { ...blankPart('mm').size, y: { text: '4', unit: 'mm' as const } } },
    { requirements: [nextRequirement(blankPart('mm'), () => 'one')] },
    { finished: ['top' as const] },
    { datum: 'back' as const },
    { finish: { text: '', unit: 'µm' as const } },
    { sizeLimits: {} },
    {
      flatness: [
        { id: 'flat', face: 'top' as const, tolerance: { text: '', unit: 'mm' as const } },
      ],
    },
  ])('is not with %o', (changed) => {
    expect(isUntouched({ ...blankPart('mm'), ...changed })).toBe(false);
  });
});
