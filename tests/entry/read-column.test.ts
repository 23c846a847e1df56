import { describe, expect, it } from 'vitest';
import type { ColumnReading } from '../../src/core/readings/reading';
import { fieldKey } from '../../src/entry/field-keys';
import { readSetups } from '../../src/entry/read-setups';
import type { ColumnSetup } from '../../src/entry/setup-entry';
import { noUnit } from './support/no-unit';
import { PART } from './support/part';
import { columnSetup } from './support/setups';
import { missing, told, wrong } from './support/told';

function read(setup: ColumnSetup) {
  const { readings, problems } = readSetups([setup], PART);
  return { readings: readings as ColumnReading[], problems: told(problems) };
}

/** The readings that were made, as face and height. */
const made = (setup: ColumnSetup) =>
  read(setup).readings.map(({ face, height }) => `${face} ${height}`);

describe('a column run up both sides', () => {
  it.each([
    ['0.0004', 'tenths', 'in', 'in'],
    ['-0.0004', 'thou', 'in', 'in'],
    ['0.004', 'µm', 'mm', 'mm'],
  ] as const)(
    '%s in a field of %s is taken, and asked about: it may be %s',
    (text, reading, size, unit) => {
      const heights = size === 'in' ? (['0.5', '3'] as const) : (['10', '80'] as const);
      const { problems, readings } = read(
        columnSetup({ heights, right: [text, '1'], left: ['0', '0.03'] }, { size, reading }),
      );
      expect(readings).toHaveLength(4);
      expect(problems).toEqual({
        [fieldKey.traverse('on right', 'low')]: {
          kind: 'doubtful',
          message: `Less than a dial shows. Is it in ${unit}? Then type “${unit}” after it`,
        },
      });
    },
  );

  it('gives heights in mm and readings in µm, by placing', () => {
    const shared = { kind: 'column', column: 'column', base: 'bottom' };
    const right = { ...shared, placing: 'on right', face: 'right' };
    const left = { ...shared, placing: 'on left', face: 'left' };
    expect(read(columnSetup())).toEqual({
      readings: [
        { ...right, id: 'on right low', height: 10, value: 4 },
        { ...right, id: 'on right high', height: 80, value: 31 },
        { ...left, id: 'on left low', height: 10, value: 7 },
        { ...left, id: 'on left high', height: 80, value: 24 },
      ],
      problems: {},
    });
  });

  it('is converted from inches and thou', () => {
    const typed = { heights: ['0.5', '3'], right: ['-1', '0.1'], left: ['0', '2'] } as const;
    const { readings } = read(columnSetup(typed, { size: 'in', reading: 'thou' }));
    expect(readings.map(({ height }) => height)).toEqual([12.7, 76.2, 12.7, 76.2]);
    const values = [-25.4, 2.54, 0, 50.8];
    expect(readings).toHaveLength(values.length);
    values.forEach((value, index) => {
      expect(readings[index]?.value).toBeCloseTo(value, 12);
    });
  });
});

describe('a height that is refused takes its readings with it, on both sides', () => {
  it.each([
    ['letters', 'x', noUnit('x')],
    ['two marks', '8..0', 'Two decimal marks: keep one'],
    ['above the part', '90.5', 'Above the part, which is 90 mm high there'],
    ['below the plate', '-2', 'Below the plate: heights count up from it'],
    ['the same again', '10,0', 'This height is there already: two different heights show a lean'],
  ])('%s', (_, high, message) => {
    const setup = columnSetup({ heights: ['10', high] });
    expect(read(setup).problems).toEqual({ [fieldKey.height('high')]: wrong(message) });
    expect(made(setup)).toEqual(['right 10', 'left 10']);
  });

  it('said in the unit that heights are typed in', () => {
    const typed = { heights: ['0.5', '4'] } as const;
    const setup = columnSetup(typed, { size: 'in', reading: 'tenths' });
    expect(read(setup).problems).toEqual({
      [fieldKey.height('high')]: wrong('Above the part, which is 3.5433 in high there'),
    });
  });

  it('and one that is not there yet, without being wrong', () => {
    const setup = columnSetup({ heights: ['', '80'] });
    expect(read(setup).problems).toEqual({
      [fieldKey.height('low')]: missing('How high?'),
    });
    expect(made(setup)).toEqual(['right 80', 'left 80']);
  });
});

describe('a reading', () => {
  const key = fieldKey.traverse('on left', 'high');

  it.each([
    ['31 m', noUnit('m')],
    ['1.2.3', 'Two decimal marks: keep one'],
    ['5000.1', 'Beyond 5 mm: no indicator of this kind travels so far. Check the unit'],
  ])('%j is refused and none is made of it: %s', (text, message) => {
    const setup = columnSetup({ left: ['7', text] });
    expect(read(setup).problems).toEqual({ [key]: wrong(message) });
    expect(made(setup)).toEqual(['right 10', 'right 80', 'left 10']);
  });

  it('on the other side is missing once one side is read, and not before', () => {
    expect(read(columnSetup({ left: ['', ''] })).problems).toEqual({
      [fieldKey.traverse('on left', 'low')]: missing('Read the left side here too'),
      [fieldKey.traverse('on left', 'high')]: missing('Read the left side here too'),
    });
    expect(read(columnSetup({ right: ['', ''], left: ['', ''] })).problems).toEqual({});
  });
});

describe('a rise', () => {
  // 2 × 10 µm/mm over the 70 mm from one height to the other.
  it('of 1400 µm is still believed', () => {
    expect(read(columnSetup({ left: ['0', '1400'] })).problems).toEqual({});
  });

  it.each(['1401', '-1401'])('of %s µm is too steep, and no reading is made of it', (high) => {
    const setup = columnSetup({ left: ['0', high] });
    expect(read(setup).problems).toEqual({
      [fieldKey.traverse('on left', 'high')]: wrong(
        'That is over half a degree out of square. Check this reading, its unit and the heights',
      ),
    });
    expect(made(setup)).not.toContain('left 80');
  });
});
