import { describe, expect, it } from 'vitest';
import { fieldKey } from '../../src/entry/field-keys';
import { readAgain } from '../../src/entry/new-setup';
import { seatAgain, withReading } from '../../src/entry/placings';
import { readingsBefore } from '../../src/entry/readings-before';
import type { SetupEntry } from '../../src/entry/setup-entry';
import { countedIds } from './support/ids';
import { overFaceSetup } from './support/over-face';
import { assumption, columnSetup, micrometerSetup, noseSetup } from './support/setups';
import { micro, mm } from './support/typed';

const LAST: readonly SetupEntry[] = [
  noseSetup(),
  columnSetup(),
  micrometerSetup([['10', '', '60.001']]),
  overFaceSetup([['5', '10', '1']]),
  { ...overFaceSetup([['5', '10', '7']], 'face map'), id: 'map' },
  assumption(micro('1')),
];
const newId = countedIds();
const AGAIN = LAST.flatMap((setup) => readAgain(setup, newId) ?? []);

describe('what was read before at the same point', () => {
  it('is that of the inspection before, whatever the ids are by now', () => {
    const before = readingsBefore(AGAIN, LAST);
    expect([...before.values()].map(({ typed, when }) => [typed.text, when])).toEqual(
      ['34', '31', '4', '31', '7', '24', '60.001', '1', '7'].map((text) => [text, 'last time']),
    );
  });

  it('is that of the seating before, once there is one', () => {
    const again = withReading(
      seatAgain(noseSetup(), 'on left', () => 'again'),
      'again',
      '30',
    );
    const before = readingsBefore([again], LAST);
    expect(before.get(fieldKey.placing('on left'))).toMatchObject({ when: 'last time' });
    expect(before.get(fieldKey.placing('again'))).toEqual({
      typed: micro('31'),
      when: 'seating before',
    });
  });

  it('is nothing where the height is another one, but the same in whatever way it is typed', () => {
    expect(readingsBefore([noseSetup({ indicator: '79' })], LAST).size).toBe(0);
    expect(readingsBefore([noseSetup({ nose: '6,0', indicator: '80.00' })], LAST).size).toBe(2);
    const inInches = { ...noseSetup(), noseHeight: mm('6'), indicatorHeight: micro('80000') };
    expect(readingsBefore([inInches], LAST).size).toBe(2);
  });

  it('is nothing of a place that is not said: two such may be anywhere', () => {
    const unplaced = [
      micrometerSetup([
        ['', '', '60.001'],
        ['', '', '60.003'],
      ]),
    ];
    expect(readingsBefore(unplaced, []).size).toBe(0);
    expect(readingsBefore(unplaced, unplaced).size).toBe(0);
  });

  it('is nothing where nothing was typed', () => {
    expect(readingsBefore([noseSetup()], [noseSetup({ right: '', left: ' ' })]).size).toBe(0);
    expect(readingsBefore(LAST, []).size).toBe(0);
  });
});
