import { describe, expect, it } from 'vitest';
import { allReadAgain } from '../../src/entry/all-read-again';
import { baseOf, onAllFourSides } from '../../src/entry/four-sides';
import { passedOverAgain } from '../../src/entry/over-face-seatings';
import { seatEachAgain } from '../../src/entry/seat-each-again';
import type { OverFaceSetup, SetupEntry } from '../../src/entry/setup-entry';
import { countedIds } from './support/ids';
import { overFaceSetup } from './support/over-face';
import { columnSetup, micrometerSetup, noseSetup } from './support/setups';

/** What is left to be read of each setup: the sides that it stands for, or its places. */
function toRead(setups: readonly SetupEntry[]): readonly unknown[] {
  return setups.map((setup) => {
    if ('placings' in setup) {
      const placings: readonly Parameters<typeof baseOf>[1][] = setup.placings;
      const sides = setup.placings.map(({ face }) => face);
      return sides.map((face, index) => `${face} on ${baseOf(setup, placings[index] ?? {})}`);
    }
    return 'places' in setup ? setup.places.map(({ up }) => up.text) : setup.kind;
  });
}

const SIDES = ['right on bottom', 'left on bottom'];

describe('an inspection that is begun with the setups of another', () => {
  const newId = countedIds();

  it.each([
    ['the comparator', noseSetup()],
    ['the column', columnSetup()],
  ])('seats each side once under %s, however often it was seated', (_, setup) => {
    const [seated] = seatEachAgain([setup], newId);
    expect(toRead([seated!])).not.toEqual([SIDES]);
    expect(toRead(allReadAgain([seated!], newId))).toEqual([SIDES]);
  });

  it('seats the block once on each of the four sides that it was turned on', () => {
    const turned = onAllFourSides(noseSetup(), newId);
    const [first] = turned.placings;
    const seated = { ...turned, placings: [...turned.placings, { ...first!, id: 'again' }] };
    expect(toRead(allReadAgain([seated], newId))).toEqual(toRead([turned]));
  });

  const map = overFaceSetup([
    ['5', '10', '1'],
    ['35', '50', '2'],
  ]);

  it('passes over a face once, in each way and at each set of places', () => {
    const onJacks: OverFaceSetup = { ...map, id: 'jacks', kind: 'face map' };
    const elsewhere: OverFaceSetup = { ...overFaceSetup([['20', '20', '3']]), id: 'elsewhere' };
    const passed = passedOverAgain([map, onJacks, elsewhere], map, newId);
    expect(passed).toHaveLength(4);
    expect(toRead(allReadAgain(passed, newId))).toEqual([['5', '35'], ['5', '35'], ['20']]);
    expect(allReadAgain(passed, newId).map(({ kind }) => kind)).toEqual([
      'over the top',
      'face map',
      'over the top',
    ]);
  });

  it('keeps two settings of one comparator on the same sides: they are no seatings', () => {
    const settings = [noseSetup(), noseSetup({ indicator: '40' })];
    expect(toRead(allReadAgain(settings, newId))).toEqual([SIDES, SIDES]);
  });

  it('keeps every place of the micrometer, also where two are the same', () => {
    const twice = micrometerSetup([
      ['10', '', '60.001'],
      ['10', '', '60.002'],
    ]);
    expect(toRead(allReadAgain([twice], newId))).toEqual([['10', '10']]);
  });
});
