import { describe, expect, it } from 'vitest';
import { partInUnit, setupInUnits } from '../../src/entry/in-units';
import { asked, ENTRY } from './support/part';
import { assumption, columnSetup, micrometerSetup, noseSetup } from './support/setups';
import { inch, micro, mm, tenths } from './support/typed';

const INCH = { size: 'in', reading: 'tenths' } as const;

describe('a part put into inches', () => {
  const entry = {
    ...ENTRY,
    size: { x: mm('50.8'), y: mm('half'), z: mm('') },
    requirements: [asked('right', 'bottom', mm('0.0254')), asked('back', 'bottom', mm(''))],
    flatness: [{ id: 'flat', face: 'top', tolerance: mm('0.00254') }] as const,
  };
  const converted = partInUnit(entry, 'in');

  it('has its sizes and tolerances in inches, unreadable text as it was', () => {
    expect(converted.size).toEqual({ x: inch('2'), y: inch('half'), z: inch('') });
    expect(converted.requirements.map(({ tolerance }) => tolerance)).toEqual([
      inch('0.001'),
      inch(''),
    ]);
    expect(converted.flatness?.map(({ tolerance }) => tolerance)).toEqual([inch('0.0001')]);
  });

  it('has all the rest unchanged', () => {
    const { size, requirements, flatness } = entry;
    const lines = converted.requirements.map((line, index) => ({
      ...line,
      tolerance: requirements[index]!.tolerance,
    }));
    expect({ ...converted, size, requirements: lines, flatness }).toEqual(entry);
  });
});

describe('a setup put into inches and tenths', () => {
  it('of the nose comparator: heights and readings, each in its own', () => {
    const typed = { nose: '6.35', indicator: '76.2', right: '25.4', left: '?' };
    const expected = { nose: '0.25', indicator: '3', right: '10', left: '?' };
    expect(setupInUnits(noseSetup(typed), INCH)).toEqual(noseSetup(expected, INCH));
  });

  it('of the column: heights and the readings at each of them', () => {
    const typed = { heights: ['12.7', '76.2'], right: ['2.54', ''], left: ['-5.08', '0'] } as const;
    const expected = { heights: ['0.5', '3'], right: ['1', ''], left: ['-2', '0'] } as const;
    expect(setupInUnits(columnSetup(typed), INCH)).toEqual(columnSetup(expected, INCH));
  });

  it('of the micrometer: places and thicknesses', () => {
    const setup = micrometerSetup([['12.7', '', '50.8254']]);
    const expected = micrometerSetup([['0.5', '', '2.001']], ['right', 'left'], 'in');
    expect(setupInUnits(setup, INCH)).toEqual(expected);
  });

  it('of an assumption: in tenths, whatever the readings are in', () => {
    const converted = setupInUnits(assumption(micro('5.08')), { size: 'in', reading: 'thou' });
    expect(converted).toEqual(assumption(tenths('2')));
  });
});
