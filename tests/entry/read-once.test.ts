import { describe, expect, it } from 'vitest';
import { onAllFourSides } from '../../src/entry/four-sides';
import { seatAgain } from '../../src/entry/placings';
import { isComparatorUnset, isReadOnce, isUnread } from '../../src/entry/read-once';
import { countedIds } from './support/ids';
import { columnSetup, micrometerSetup, noseSetup } from './support/setups';

const EMPTY = noseSetup({ right: '', left: ' ' });

describe('nothing has been read', () => {
  it('until anything stands in a field of an instrument', () => {
    expect(isUnread([])).toBe(true);
    expect(isUnread([EMPTY, micrometerSetup([['5', '', '']])])).toBe(true);
    expect(isUnread([EMPTY, micrometerSetup([['5', '', '60']])])).toBe(false);
    expect(isUnread([columnSetup()])).toBe(false);
  });
});

describe('a comparator is unset', () => {
  const unset = noseSetup({ nose: '', indicator: ' ', right: '', left: '' });

  it('until a height or a reading is typed, or it is turned on all four sides', () => {
    expect(isComparatorUnset(unset)).toBe(true);
    expect(isComparatorUnset(noseSetup({ indicator: '', right: '', left: '' }))).toBe(false);
    expect(isComparatorUnset(noseSetup({ nose: '', indicator: '', left: '' }))).toBe(false);
    expect(isComparatorUnset(onAllFourSides(unset, countedIds()))).toBe(false);
    expect(isComparatorUnset(columnSetup())).toBe(false);
  });
});

describe('each side has been read once', () => {
  it('when all are read and none is repeated', () => {
    expect(isReadOnce([noseSetup(), micrometerSetup([['5', '', '']])])).toBe(true);
    expect(isReadOnce([columnSetup()])).toBe(true);
    expect(isReadOnce([noseSetup(), EMPTY])).toBe(false);
    expect(isReadOnce([columnSetup({ left: ['7', ''] })])).toBe(false);
    expect(isReadOnce([seatAgain(noseSetup(), 'on right', countedIds())])).toBe(false);
    expect(isReadOnce([micrometerSetup([['5', '', '60']])])).toBe(false);
  });
});
