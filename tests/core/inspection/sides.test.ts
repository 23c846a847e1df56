import { describe, expect, it } from 'vitest';
import { inspect } from '../../../src/core/inspection/inspect';
import { DEFAULT_KIT } from '../../../src/core/readings/kit';
import type { Reading } from '../../../src/core/readings/reading';
import { kitForChecks, withObservedSeating } from '../../../src/core/readings/repeats';
import { assumedParallel, nose, traverse } from '../support/readings';
import { BLOCK, partWith } from '../support/worked-block';

/** Of each pair that was read: its faces, what it stood on, the lever and the height, by hand from the heights typed. */
function pairsIn(readings: readonly Reading[]) {
  const { sides } = inspect(partWith([]), readings, DEFAULT_KIT, 0.95);
  return sides.map(({ faces, base, reach, height }) => [...faces, base, reach, height]);
}

// The block is 60 × 40 × 90.
describe('the sides that were read', () => {
  it('are a pair for each base, named by the side that was read first, with the greatest lever of their own', () => {
    expect(
      pairsIn([
        nose('left', 31),
        nose('right', 34),
        nose('front', 12, { setting: 'short', low: 10, high: 30 }),
        nose('right', 5, { setting: 'short', low: 10, high: 30 }),
        nose('top', 7, { setting: 'lying', base: 'right', low: 5, high: 35 }),
        nose('right', 9, { setting: 'turned', base: 'top', low: 20, high: 85 }),
      ]),
    ).toEqual([
      ['left', 'right', 'bottom', 74, 90],
      ['front', 'back', 'bottom', 20, 90],
      ['top', 'bottom', 'right', 30, 60],
      ['right', 'left', 'top', 65, 90],
    ]);
  });

  it('have for a lever of a column the way from its lowest height to its highest', () => {
    expect(
      pairsIn([
        ...traverse('right', { 15: 1, 40: 2, 85: 3 }),
        ...traverse('left', { 15: 2, 85: 5 }),
      ]),
    ).toEqual([['right', 'left', 'bottom', 70, 90]]);
  });

  it('have no total difference where the column was read at one height', () => {
    const readings = [...traverse('right', { 15: 1 }), ...traverse('left', { 15: 2 })];
    const all = [...readings, assumedParallel('right', 1)];
    const { sides } = inspect(partWith([]), all, DEFAULT_KIT, 0.95);
    expect(sides.map(({ reach, difference }) => [reach, difference])).toEqual([[0, undefined]]);
  });
});

it('a column at one height says nothing of the seating', () => {
  const readings = traverse('right', { 15: 1 });
  expect(withObservedSeating(DEFAULT_KIT, readings, BLOCK).seating).toBe(DEFAULT_KIT.seating);
  expect(kitForChecks(DEFAULT_KIT, readings, BLOCK)).toEqual(DEFAULT_KIT);
});

it('traverses of another side, or from another base, are no repeats of each other', () => {
  // As repeats they would show a seating of thousands of µm.
  const readings = [
    ...traverse('right', { 15: 0, 85: 900 }),
    ...traverse('left', { 15: 0, 85: -900 }),
    ...traverse('right', { 15: 0, 85: 300 }, { base: 'top' }),
  ];
  expect(withObservedSeating(DEFAULT_KIT, readings, BLOCK).seating).toBe(DEFAULT_KIT.seating);
});
