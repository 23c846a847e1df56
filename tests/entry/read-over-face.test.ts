import { describe, expect, it } from 'vitest';
import { fieldKey } from '../../src/entry/field-keys';
import { readSetups } from '../../src/entry/read-setups';
import { noUnit } from './support/no-unit';
import { overFaceSetup } from './support/over-face';
import { PART } from './support/part';
import { missing, told, wrong } from './support/told';

function read(...setup: Parameters<typeof overFaceSetup>) {
  const { readings, problems } = readSetups([overFaceSetup(...setup)], PART);
  return { readings, problems: told(problems) };
}

const OFF = 'Off the face: distances count inward from the edge';
const FAR = 'Beyond 5 mm: no indicator of this kind travels so far. Check the unit';

describe.each(['over the top', 'face map'] as const)('%s', (kind) => {
  it('is read at places from the front and left edges of the top, in mm from the centre', () => {
    const { readings, problems } = read(
      [
        ['5', '10', '3'],
        ['35', '', '-2.5'],
      ],
      kind,
    );
    expect(problems).toEqual({});
    expect(readings).toEqual([
      {
        ...{ kind, id: 'spot 1', placing: 'over', face: 'top' },
        ...{ point: { x: -20, y: -15, z: 0 }, value: 3 },
      },
      {
        ...{ kind, id: 'spot 2', placing: 'over', face: 'top' },
        ...{ point: { x: 0, y: 15, z: 0 }, value: -2.5 },
      },
    ]);
  });

  it('of a side counts up from the datum, in inches too', () => {
    const { readings } = read([['1', '0.5', '4']], kind, ['right', 'left'], 'in');
    expect(readings).toMatchObject([{ face: 'right', value: 4 }]);
    const [reading] = readings;
    if (reading?.kind !== kind) throw new Error('Another kind of reading');
    expect(reading.point.x).toBe(0);
    expect(reading.point.y).toBeCloseTo(-20 + 12.7, 12);
    expect(reading.point.z).toBeCloseTo(-45 + 25.4, 12);
  });
});

describe('a place over a face', () => {
  it('that is still empty asks for nothing', () => {
    expect(read([['', '', '']])).toEqual({ readings: [], problems: {} });
  });

  it.each([
    [['5', '10', ''], { [fieldKey.placing('spot 1')]: missing('What did the indicator show?') }],
    [['', '', '3'], { [fieldKey.up('spot 1')]: missing('Where was it?') }],
    [
      ['', '10', ''],
      {
        [fieldKey.up('spot 1')]: missing('Where was it?'),
        [fieldKey.placing('spot 1')]: missing('What did the indicator show?'),
      },
    ],
    [['-1', '10', '3'], { [fieldKey.up('spot 1')]: wrong(OFF) }],
    [
      ['40.1', '10', '3'],
      { [fieldKey.up('spot 1')]: wrong('Off the face, which is 40 mm long there') },
    ],
    [
      ['5', '60.1', '3'],
      { [fieldKey.across('spot 1')]: wrong('Off the face, which is 60 mm long there') },
    ],
    [['5', '10', '5001'], { [fieldKey.placing('spot 1')]: wrong(FAR) }],
    [['5', '10', '-5001'], { [fieldKey.placing('spot 1')]: wrong(FAR) }],
    [
      ['5', '10', 'three'],
      {
        [fieldKey.placing('spot 1')]: wrong(noUnit('three')),
      },
    ],
  ] as const)('%j gives no reading, and says why', (place, problems) => {
    expect(read([place])).toEqual({ readings: [], problems });
  });

  it('that is wrong does not take the others with it', () => {
    const { readings, problems } = read([
      ['5', '10', '3x'],
      ['5', '50', '1'],
    ]);
    expect(readings.map(({ id }) => id)).toEqual(['spot 2']);
    expect(Object.keys(problems)).toEqual([fieldKey.placing('spot 1')]);
  });

  it('may lie on the very edge', () => {
    expect(
      read([
        ['0', '0', '1'],
        ['40', '60', '2'],
      ]).readings,
    ).toMatchObject([{ point: { x: -30, y: -20 } }, { point: { x: 30, y: 20 } }]);
  });
});
