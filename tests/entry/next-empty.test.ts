import { describe, expect, it } from 'vitest';
import { nextEmpty } from '../../src/entry/next-empty';
import { readSetups } from '../../src/entry/read-setups';
import type { SetupEntry } from '../../src/entry/setup-entry';
import { overFaceSetup } from './support/over-face';
import { PART } from './support/part';
import { assumption, columnSetup, micrometerSetup, noseSetup } from './support/setups';
import { micro } from './support/typed';

/** What comes next, and the numbers that are then read: its own last. */
function next(...setups: readonly SetupEntry[]) {
  const found = nextEmpty(setups, PART);
  if (found === undefined) return undefined;
  const read = readSetups(found.filled, PART).readings.find(({ id }) => id === found.id);
  return [found.id, read && ('value' in read ? read.value : read)];
}

const map = overFaceSetup(
  [
    ['5', '10', '7'],
    ['35', '50', ''],
  ],
  'face map',
);

describe('the reading that comes next', () => {
  it('is the first empty one, as if it showed what its like did', () => {
    expect(next(noseSetup({ left: '' }))).toEqual(['on left', 34]);
    expect(next(noseSetup({ right: '', left: '31' }))).toEqual(['on right', 31]);
    expect(next(columnSetup({ left: ['7', ''] }))).toEqual(['on left high', 7]);
    expect(next({ ...map, kind: 'over the top' })).toEqual(['spot 2', 7]);
    expect(next(map)).toEqual(['spot 2', 7]);
  });

  it('is as of a part true to the drawing where nothing is read yet', () => {
    expect(next(noseSetup({ right: '', left: '' }))).toEqual(['on right', 0]);
    const places = micrometerSetup([['10', '', '']]);
    expect(next(places)).toEqual(['place 1', expect.objectContaining({ departure: 0 })]);
    const acrossX = micrometerSetup([['10', '20', '']], ['front', 'back']);
    expect(next(acrossX)).toEqual(['place 1', expect.objectContaining({ departure: 0 })]);
    const upZ = micrometerSetup([['10', '20', '']], ['top', 'bottom']);
    expect(next(upZ)).toEqual(['place 1', expect.objectContaining({ departure: 0 })]);
  });

  it('is looked for through all setups in their order, and leaves the others as they are', () => {
    const setups = [noseSetup(), map, columnSetup({ right: ['', ''] })];
    const found = nextEmpty(setups, PART);
    expect(found?.id).toBe('spot 2');
    expect(found?.filled.filter((setup, index) => setup === setups[index])).toEqual([
      setups[0],
      setups[2],
    ]);
  });

  it('is a height of the column that has no field in the records yet', () => {
    const column = columnSetup();
    const [right, left] = column.placings;
    const readings = { low: micro('7') };
    const partly = { ...column, placings: [right!, { ...left!, readings }] };
    expect(nextEmpty([partly], PART)?.id).toBe('on left high');
  });

  it('is none where all is read, or nothing is to be read', () => {
    expect(next()).toBeUndefined();
    expect(next(noseSetup(), columnSetup(), assumption(micro('1')))).toBeUndefined();
  });
});
