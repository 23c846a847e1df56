import fc from 'fast-check';
import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { withReading } from '../../src/entry/placings';
import type { NoseComparatorSetup } from '../../src/entry/setup-entry';
import { chain, openChain } from '../../src/state/chain';
import { closeInspection } from '../../src/state/inspections';
import {
  addSetups,
  changeSetup,
  changeSetups,
  leaveOut,
  putBack,
  readWithColumn,
  undo,
} from '../../src/state/plate-changes';
import { shop } from '../../src/state/shop';
import { switchUnits } from '../../src/state/switch-units';
import { stepsBack } from '../../src/state/undo';
import type { InspectionRecord } from '../../src/store/records';
import { loadChain, save } from '../../src/store/shop-store';
import { noseSetup } from '../entry/support/setups';
import { saving, startAfresh } from './support/fresh';
import { BLOCK, compared } from './support/inspections';

const START: InspectionRecord = {
  ...compared('i', '', ''),
  setups: [noseSetup({ right: '', left: '' })],
};

afterEach(() => vi.restoreAllMocks());

beforeEach(async () => {
  await startAfresh();
  await save([START]);
  await openChain('p');
});

const now = () => chain.value!.links[0] as InspectionRecord;
const type = (placing: 'on right' | 'on left', text: string) =>
  changeSetup(START, START.setups[0] as NoseComparatorSetup, (setup) =>
    withReading(setup, placing, text),
  );
const wait = (ms: number) => {
  const later = performance.now() + ms;
  vi.spyOn(performance, 'now').mockImplementation(() => later);
};
const kinds = () => now().setups.map(({ kind }) => kind);
const texts = () =>
  now().setups.flatMap((setup) =>
    setup.kind === 'nose comparator' ? setup.placings.map(({ reading }) => reading.text) : [],
  );

describe('reading with a column', () => {
  it('takes the place of comparators that nobody has set, over the same faces, and is taken back', () => {
    const unset = { ...noseSetup({ nose: '', indicator: '', right: '', left: '' }), id: 'unset' };
    changeSetups(START, (setups) => [...setups, unset]);
    readWithColumn(START);
    expect(now().setups).toMatchObject([
      START.setups[0],
      { kind: 'column', faces: unset.faces, base: unset.base },
    ]);
    undo(START);
    expect(now().setups).toEqual([START.setups[0], unset]);
  });
});

describe('the last change at the plate is taken back', () => {
  it('typing in one field as a whole, and field by field', async () => {
    for (const text of ['3', '34', '34.5']) type('on right', text);
    for (const text of ['3', '31']) type('on left', text);
    undo(START);
    expect(texts()).toEqual(['34.5', '']);
    undo(START);
    expect(texts()).toEqual(['', '']);
    undo(START);
    expect(now().setups).toEqual(START.setups);
    await saving('saved');
    expect((await loadChain('p')).records).toEqual([START]);
  });

  it('what is typed over after a pause by itself', () => {
    type('on right', '34');
    wait(2000);
    type('on right', '3');
    type('on right', '35');
    undo(START);
    expect(texts()).toEqual(['34', '']);
  });

  it('a setup that was removed, a reading that was left out or taken in again', () => {
    changeSetups(START, () => []);
    leaveOut(START, 'on right', 'a chip');
    putBack(START, 'on right');
    undo(START);
    expect(Object.keys(now().leftOut ?? {})).toEqual(['on right']);
    undo(START);
    expect(now()).not.toHaveProperty('leftOut');
    expect(now().setups).toEqual([]);
    undo(START);
    expect(now().setups).toEqual(START.setups);
  });

  it('an empty sheet that made way for another way of reading', () => {
    type('on right', '3');
    addSetups(START, ['column'], { faces: ['right', 'left'], base: 'bottom' });
    expect(kinds()).toEqual(['nose comparator', 'column']);
    addSetups(START, ['nose comparator'], { faces: ['left', 'right'], base: 'bottom' });
    expect(kinds()).toEqual(['nose comparator', 'nose comparator']);
    undo(START);
    expect(kinds()).toEqual(['nose comparator', 'column']);
  });

  it('a dozen times and more, each exactly as it was', () => {
    const change = fc.constantFrom<() => void>(
      () => type('on right', `${texts()[0]}1`),
      () => type('on left', `${texts()[1]}2`),
      () => changeSetups(START, (setups) => [...setups, noseSetup()]),
      () => changeSetups(START, (setups) => setups.slice(0, -1)),
      () => leaveOut(START, 'on left', 'a chip'),
    );
    fc.assert(
      fc.property(fc.array(change, { minLength: 12, maxLength: 40 }), (changes) => {
        const states = changes.map((make) => {
          const { setups, leftOut } = now();
          make();
          wait(3000);
          return { setups, leftOut };
        });
        for (const state of states.reverse()) {
          undo(START);
          expect({ setups: now().setups, leftOut: now().leftOut }).toEqual(state);
        }
      }),
      { numRuns: 20 },
    );
  });
});

describe('nothing is taken back', () => {
  it('of finished readings', () => {
    type('on right', '34');
    closeInspection(START, BLOCK);
    expect(stepsBack(now())).toBe(0);
    undo(START);
    expect(texts()).toEqual(['34', '']);
  });

  it('where they have been changed otherwise since', () => {
    type('on right', '34');
    const elsewhere = { ...now(), setups: [noseSetup({ right: '7' })] };
    chain.value = { part: 'p', links: [elsewhere] };
    undo(START);
    expect(now()).toBe(elsewhere);
  });

  it('where nothing was changed', () => {
    undo(START);
    expect(now()).toEqual(START);
  });
});

it('what can be taken back goes along into other units', () => {
  type('on right', '25.4');
  type('on left', '12.7');
  switchUnits({ size: 'in', deviation: 'thou' }, undefined, START);
  expect(texts()).toEqual(['1', '0.5']);
  undo(START);
  expect(texts()).toEqual(['1', '']);
  expect(stepsBack(now())).toBe(1);
  expect(shop.value.units.deviation).toBe('thou');
});
