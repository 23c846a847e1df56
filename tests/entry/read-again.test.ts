import { describe, expect, it } from 'vitest';
import { readAgain } from '../../src/entry/new-setup';
import { countedIds } from './support/ids';
import { assumption, columnSetup, micrometerSetup, noseSetup } from './support/setups';
import { micro, mm, tenths } from './support/typed';

describe('a setup that is read again', () => {
  it('of the nose comparator keeps its heights and faces and empties its readings', () => {
    const setup = noseSetup({}, { size: 'mm', reading: 'tenths' }, 'top');
    expect(readAgain(setup, countedIds())).toEqual({
      ...setup,
      id: 'id 1',
      placings: [
        { id: 'id 2', face: 'right', reading: tenths('') },
        { id: 'id 3', face: 'left', reading: tenths('') },
      ],
    });
  });

  it('of the column keeps its heights and empties what was read at them', () => {
    const setup = columnSetup();
    const readings = { low: micro(''), high: micro('') };
    expect(readAgain(setup, countedIds())).toEqual({
      ...setup,
      id: 'id 1',
      placings: [
        { id: 'id 2', face: 'right', readings },
        { id: 'id 3', face: 'left', readings },
      ],
    });
  });

  it('of the micrometer keeps its places and empties the thicknesses', () => {
    const setup = micrometerSetup([
      ['10', '', '60.001'],
      ['80', '4', '60.002'],
    ]);
    expect(readAgain(setup, countedIds())).toEqual({
      ...setup,
      id: 'id 1',
      places: [
        { id: 'id 2', up: mm('10'), across: mm(''), thickness: mm('') },
        { id: 'id 3', up: mm('80'), across: mm('4'), thickness: mm('') },
      ],
    });
  });

  it('is an assumption only where neither of its faces was worked: then it may no longer hold', () => {
    const word = assumption(micro('1'));
    expect(readAgain(word, countedIds())).toMatchObject({ within: micro('1') });
    expect(readAgain(word, countedIds(), 'bottom')).toMatchObject({ within: micro('1') });
    for (const face of word.faces) expect(readAgain(word, countedIds(), face)).toBeUndefined();
  });

  it('leaves the setup that it came from as it was', () => {
    const setup = columnSetup();
    readAgain(setup, countedIds());
    expect(setup).toEqual(columnSetup());
  });
});
