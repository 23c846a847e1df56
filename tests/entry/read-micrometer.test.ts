import { describe, expect, it } from 'vitest';
import type { Part } from '../../src/core/part/part';
import type { MicrometerReading } from '../../src/core/readings/reading';
import { fieldKey } from '../../src/entry/field-keys';
import { readSetups } from '../../src/entry/read-setups';
import { PART } from './support/part';
import { micrometerSetup } from './support/setups';
import { missing, told, wrong } from './support/told';

type Place = readonly [up: string, across: string, thickness: string];

/** Right to left is 60 mm, the face 40 mm across and 90 up. */
const GOOD: Place = ['10', '', '60.001'];

function read(places: readonly Place[], part: Part = PART) {
  const { readings, problems } = readSetups([micrometerSetup(places)], part);
  return { readings: readings as MicrometerReading[], problems: told(problems) };
}

describe('thicknesses at places', () => {
  it('give points in mm from the centre and departures in µm', () => {
    const { readings, problems } = read([GOOD, ['85', '4', '59.998']]);
    expect(problems).toEqual({});
    expect(readings).toMatchObject([
      { kind: 'micrometer', id: 'place 1', face: 'right', point: { x: 0, y: 0, z: -35 } },
      { kind: 'micrometer', id: 'place 2', face: 'right', point: { x: 0, y: -16, z: 40 } },
    ]);
    expect(readings[0]?.departure).toBeCloseTo(1, 9);
    expect(readings[1]?.departure).toBeCloseTo(-2, 9);
  });

  it('are converted from inches', () => {
    const setup = micrometerSetup([['0.5', '0.1', '2.362']], ['right', 'left'], 'in');
    const [reading] = readSetups([setup], PART).readings as MicrometerReading[];
    expect(reading?.point.z).toBeCloseTo(-45 + 12.7, 12);
    expect(reading?.point.y).toBeCloseTo(-20 + 2.54, 12);
    expect(reading?.departure).toBeCloseTo(2.362 * 25400 - 60000, 9);
  });
});

describe('a place that is refused, and no reading is made of it', () => {
  it.each([
    ['letters', ['ten', '', '60'], fieldKey.up, /^“ten” is no unit/],
    ['two marks', ['10', '1.2.3', '60'], fieldKey.across, /^Two decimal marks/],
    [
      'above the face',
      ['90.1', '', '60'],
      fieldKey.up,
      /^Off the face, which is 90 mm long there$/,
    ],
    ['beside the face', ['10', '41', '60'], fieldKey.across, /^Off the face, which is 40 mm long/],
    ['before the edge', ['-1', '', '60'], fieldKey.up, /^Off the face: distances count inward/],
    ['a lone minus', ['10', '', '-'], fieldKey.thickness, /^The digits are missing$/],
    ['5.1 % too thick', ['10', '', '63.06'], fieldKey.thickness, /^Far from the 60 mm of the draw/],
    ['5.1 % too thin', ['10', '', '56.94'], fieldKey.thickness, /^Far from the 60 mm of the draw/],
    ['of another unit', ['10', '', '2.362'], fieldKey.thickness, /Check the figure and the unit$/],
  ] as const)('%s', (_, place, key, message) => {
    const { readings, problems } = read([GOOD, place]);
    expect(problems).toEqual({
      [key('place 2')]: { kind: 'wrong', message: expect.stringMatching(message) },
    });
    expect(readings.map(({ id }) => id)).toEqual(['place 1']);
  });
});

describe('a place that is only begun', () => {
  it.each([
    ['without its distance up', ['', '', '60'], fieldKey.up, 'Where was it?'],
    ['without its thickness', ['10', '', ''], fieldKey.thickness, 'What did the micrometer say?'],
  ] as const)('%s has it missing, not wrong', (_, place, key, message) => {
    const { readings, problems } = read([place]);
    expect(problems).toEqual({ [key('place 1')]: missing(message) });
    expect(readings).toEqual([]);
  });

  it('not at all is passed over', () => {
    expect(read([['', '', '']])).toEqual({ readings: [], problems: {} });
  });
});

describe('two thicknesses that differ', () => {
  const steep = wrong(
    'That is over half a degree out of square. Check this reading, its unit and the heights',
  );

  it('by 10 µm/mm over the 70 mm between them are still believed', () => {
    expect(read([GOOD, ['80', '', '60.7']]).problems).toEqual({});
  });

  it('by more are too steep, and no reading is made of the second', () => {
    const { readings, problems } = read([GOOD, ['80', '', '60.702']]);
    expect(problems).toEqual({ [fieldKey.thickness('place 2')]: steep });
    expect(readings.map(({ id }) => id)).not.toContain('place 2');
  });

  it('by up to 0.1 mm are believed however close together', () => {
    expect(read([GOOD, ['10', '', '60.1']]).problems).toEqual({});
    expect(read([GOOD, ['10', '', '60.102']]).problems).toEqual({
      [fieldKey.thickness('place 2')]: steep,
    });
  });
});

it('a place on the very edge is on the face, whatever unit the sizes came from', () => {
  // 0.63 in: its mm and µm differ in the last digit of the computer.
  const part: Part = { ...PART, block: { size: { x: 60, y: 40, z: (0.63 * 25400) / 1000 } } };
  const setup = micrometerSetup([['0.63', '', '2.3622']], ['right', 'left'], 'in');
  const { readings, problems } = readSetups([setup], part);
  expect(told(problems)).toEqual({});
  expect(readings).toHaveLength(1);
});
