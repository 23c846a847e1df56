import { describe, expect, it } from 'vitest';
import { readAgain } from '../../src/entry/new-setup';
import { readingRows } from '../../src/entry/reading-rows';
import { readingsBefore } from '../../src/entry/readings-before';
import type { MicrometerSetup } from '../../src/entry/setup-entry';
import { takenOver, withThickness } from '../../src/entry/taken-over';
import { countedIds } from './support/ids';
import { micrometerSetup } from './support/setups';
import { mm } from './support/typed';

const MADE = '2026-03-05T14:07:00.000Z';
const LATER = '2026-03-06T09:00:00.000Z';
const LAST = micrometerSetup([
  ['10', '', '60.001'],
  ['80', '', '60.003'],
]);
const newId = countedIds();

function again(setup: MicrometerSetup): MicrometerSetup {
  return readAgain(setup, newId) as MicrometerSetup;
}

function over(setup: MicrometerSetup, last = LAST, made = MADE) {
  return takenOver(setup, readingsBefore([setup], [last]), { made, worked: ['bottom', 'top'] });
}

describe('thicknesses of last time', () => {
  it('are taken over where neither face was worked, with when they were read', () => {
    expect(over(again(LAST))?.places).toMatchObject([
      { thickness: mm('60.001'), takenOver: MADE },
      { thickness: mm('60.003'), takenOver: MADE },
    ]);
    expect(readingRows([over(again(LAST)) ?? LAST]).map((row) => row.takenOver)).toEqual([
      MADE,
      MADE,
    ]);
  });

  it('are not where one of the faces was worked since', () => {
    const setup = again(LAST);
    for (const face of setup.faces) {
      const before = readingsBefore([setup], [LAST]);
      expect(takenOver(setup, before, { made: MADE, worked: ['bottom', face] })).toBeUndefined();
    }
  });

  it('are left alone where something is typed, and there is nothing to take over then', () => {
    const setup = again(LAST);
    const first = withThickness(setup, setup.places[0]?.id ?? '', mm('60.002'));
    expect(over(first)?.places).toMatchObject([{ thickness: mm('60.002') }, { takenOver: MADE }]);
    expect(over(first)?.places[0]).not.toHaveProperty('takenOver');
    const both = withThickness(first, setup.places[1]?.id ?? '', mm('60.002'));
    expect(over(both)).toBeUndefined();
  });

  it('keep the day that they were read, however often they are taken over', () => {
    const second = over(again(LAST));
    const third = over(again(second ?? LAST), second, LATER);
    expect(third?.places.map((place) => place.takenOver)).toEqual([MADE, MADE]);
  });

  it('are no longer taken over once the place is read, nor in what is read again', () => {
    const setup = over(again(LAST)) ?? LAST;
    const read = withThickness(setup, setup.places[0]?.id ?? '', mm('60.004'));
    expect(read.places[0]).not.toHaveProperty('takenOver');
    expect(read.places[1]).toHaveProperty('takenOver', MADE);
    expect(again(setup).places[1]).not.toHaveProperty('takenOver');
  });

  it('are those of the same place only', () => {
    const elsewhere = again(micrometerSetup([['20', '', '']]));
    expect(over(elsewhere)).toBeUndefined();
  });
});
