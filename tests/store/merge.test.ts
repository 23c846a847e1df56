import { describe, expect, it } from 'vitest';
import { merge } from '../../src/store/merge';
import type { InspectionRecord } from '../../src/store/records';
import { noseSetup } from '../entry/support/setups';
import { inspection, part, shop } from './support/samples';

const at = (minute: number) => `2024-03-05T14:0${minute}:00.000Z`;
const read = (right: string, left: string, changed: string): InspectionRecord => ({
  ...inspection('i', 'p'),
  changed,
  setups: [noseSetup({ right, left })],
});
const FROM = read('', '', at(0));

describe('readings from two windows', () => {
  it('are all there, at a time of their own', () => {
    const merged = merge(FROM, read('34', '', at(1)), read('', '31', at(2)));
    expect(merged).toEqual({ record: read('34', '31', '2024-03-05T14:02:00.001Z') });
  });

  it('of the same side: the later stands, the earlier is overruled', () => {
    const [mine, theirs] = [read('34', '', at(1)), read('43', '', at(2))];
    expect(merge(FROM, mine, theirs)).toEqual({ record: theirs, overruled: mine });
    expect(merge(FROM, theirs, mine)).toEqual({ record: theirs, overruled: mine });
  });

  it('that were changed in the same moment: the one that comes to be written stands', () => {
    const [mine, theirs] = [read('34', '', at(1)), read('43', '', at(1))];
    expect(merge(FROM, mine, theirs)).toEqual({ record: mine, overruled: theirs });
  });

  it('are put together also where nobody knows what they were made from', () => {
    const [one, other] = ['one', 'other'].map((id) => ({ ...noseSetup(), id }));
    const merged = merge(
      undefined,
      { ...FROM, changed: at(1), setups: [one!] },
      { ...FROM, changed: at(2), setups: [other!] },
    );
    expect(merged.record).toMatchObject({ setups: [one, other] });
    expect(merged.overruled).toBeUndefined();
  });
});

describe('readings that one window finished', () => {
  const closed = { at: at(1), part: part('p').entry, kit: shop().kit };

  it('take nothing in that another typed meanwhile, and keep it as another state', () => {
    const finished = { ...read('34', '31', at(1)), closed };
    const typed = read('', '99', at(2));
    expect(merge(FROM, typed, finished)).toEqual({ record: finished, overruled: typed });
    expect(merge(FROM, finished, typed)).toEqual({ record: finished, overruled: typed });
  });

  it('have nothing beside them where the other window typed nothing', () => {
    const finished = { ...read('34', '31', at(1)), closed };
    expect(merge(FROM, finished, { ...FROM, changed: at(2) })).toEqual({ record: finished });
  });

  it('are open where one opened them again, with what that one typed', () => {
    const finished = { ...read('34', '31', at(1)), closed };
    const reopened = read('43', '31', at(3));
    const { record } = merge(finished, reopened, { ...finished, changed: at(2) });
    expect(record).toEqual(reopened);
  });
});

describe('the shop from two windows', () => {
  it('is never one kit with what was typed for another', () => {
    const from = { ...shop(), kitName: 'Kit 1' };
    const other = { ...from.kit, seating: { text: '9', unit: 'µm' as const } };
    const taken = { ...from, changed: at(2), kitName: 'Kit 2', kit: other };
    const typed = { ...from, changed: at(1), kit: { ...from.kit, warmth: '3' } };
    expect(merge(from, typed, taken)).toEqual({ record: taken, overruled: typed });
  });
});
