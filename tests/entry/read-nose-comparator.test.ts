import { describe, expect, it } from 'vitest';
import type { NoseComparatorReading } from '../../src/core/readings/reading';
import { fieldKey } from '../../src/entry/field-keys';
import { readSetups } from '../../src/entry/read-setups';
import type { NoseComparatorSetup } from '../../src/entry/setup-entry';
import { noUnit } from './support/no-unit';
import { PART } from './support/part';
import { noseSetup } from './support/setups';
import { missing, told, wrong } from './support/told';

const CHARACTERS = noUnit('a');
const TRAVEL = 'Beyond 5 mm: no indicator of this kind travels so far. Check the unit';

function read(setup: NoseComparatorSetup) {
  const { readings, problems } = readSetups([setup], PART);
  return { readings: readings as NoseComparatorReading[], problems: told(problems) };
}

/** The sides that readings were made of. */
const sides = (setup: NoseComparatorSetup) => read(setup).readings.map(({ face }) => face);

describe('a setting swung to both sides', () => {
  it('gives heights in mm and readings in µm', () => {
    const shared = { kind: 'nose comparator', setting: 'nose', base: 'bottom' };
    const heights = { noseHeight: 6, indicatorHeight: 80 };
    expect(read(noseSetup())).toEqual({
      readings: [
        { ...shared, ...heights, id: 'on right', face: 'right', value: 34 },
        { ...shared, ...heights, id: 'on left', face: 'left', value: 31 },
      ],
      problems: {},
    });
  });

  it('is converted from inches and tenths', () => {
    const typed = { nose: '0.25', indicator: '3', right: '-12', left: '1.5' };
    const { readings } = read(noseSetup(typed, { size: 'in', reading: 'tenths' }));
    const [right, left] = readings;
    expect(right).toMatchObject({ noseHeight: 6.35, indicatorHeight: 76.2 });
    expect(right?.value).toBeCloseTo(-30.48, 12);
    expect(left?.value).toBeCloseTo(3.81, 12);
  });

  it('takes a face that was read twice as two readings', () => {
    const setup = noseSetup();
    const [right] = setup.placings;
    const again = { ...right!, id: 'on right again' };
    expect(sides({ ...setup, placings: [...setup.placings, again] })).toEqual([
      'right',
      'left',
      'right',
    ]);
  });
});

describe('a reading', () => {
  it.each([
    ['3a', CHARACTERS],
    ['1.2.3', 'Two decimal marks: keep one'],
    ['-', 'The digits are missing'],
    ['5001', TRAVEL],
    ['-5001', TRAVEL],
  ])('%j on the left is refused and none is made of it: %s', (left, message) => {
    const setup = noseSetup({ left });
    expect(read(setup).problems).toEqual({ [fieldKey.placing('on left')]: wrong(message) });
    expect(sides(setup)).toEqual(['right']);
  });

  it('that is still to come is missing, not wrong', () => {
    const setup = noseSetup({ left: '' });
    expect(read(setup).problems).toEqual({
      [fieldKey.placing('on left')]: missing(
        'Swing round and read the left side too, the setting untouched',
      ),
    });
    expect(sides(setup)).toEqual(['right']);
  });

  it('is not asked for before the first is there', () => {
    expect(read(noseSetup({ right: '', left: '' })).problems).toEqual({});
  });
});

describe('a difference between the sides', () => {
  // 2 × 10 µm/mm over the lever of 74 mm.
  it('of 1480 µm is still believed', () => {
    expect(read(noseSetup({ right: '-740', left: '740' })).problems).toEqual({});
  });

  it.each(['741', '-2221'])('to %s µm is too steep, and no reading is made of it', (left) => {
    const setup = noseSetup({ right: '-740', left });
    expect(read(setup).problems).toEqual({
      [fieldKey.placing('on left')]: wrong(
        'That is over half a degree out of square. Check this reading, its unit and the heights',
      ),
    });
    expect(sides(setup)).not.toContain('left');
  });
});
