import { beforeEach, describe, expect, it } from 'vitest';
import { setAnew, takeBackSetAnew } from '../../src/state/begun-anew';
import { comparatorHistories, currentRun } from '../../src/state/comparators';
import { found, gatherFound } from '../../src/state/found';
import { comparatorsIn } from '../../src/state/found-in';
import { openShop } from '../../src/state/open-shop';
import { shop } from '../../src/state/shop';
import { summaries } from '../../src/state/summaries';
import type { InspectionRecord } from '../../src/store/records';
import { save } from '../../src/store/shop-store';
import { columnSetup } from '../entry/support/setups';
import { part } from '../store/support/samples';
import { saving, startAfresh } from './support/fresh';
import { BLOCK, compared } from './support/inspections';

const PART = { ...part('p'), entry: BLOCK };
const NAME = 'Nose at 6 mm, indicator at 80 mm';

/** Read on the hour and finished with `zero` as the mean of both sides. */
const at = (hour: number, zero: number): InspectionRecord => {
  const made = `2024-03-05T${String(hour).padStart(2, '0')}:00:00.000Z`;
  const read = compared(`i${hour}`, String(zero + 1), String(zero - 1));
  return { ...read, made, closed: { at: made, part: BLOCK, kit: shop.value.kit } };
};

beforeEach(async () => {
  await startAfresh();
  found.value = new Map();
  summaries.value = new Map();
});

async function gather(...inspections: readonly InspectionRecord[]) {
  await save([PART, ...inspections]);
  await openShop();
  await gatherFound(() => true);
  const [history] = comparatorHistories.value;
  if (history === undefined) throw new Error('Nothing was found');
  return history;
}

describe('the history of a comparator', () => {
  it('has the zero of each finished inspection, half of what both sides show, in the order of time', async () => {
    const history = await gather(at(9, 3.5), at(8, 3), at(10, 4));
    expect(history).toMatchObject({ name: NAME, kind: 'zero' });
    expect(history.points.map(({ value }) => value)).toEqual(
      [3, 3.5, 4].map((zero) => expect.closeTo(zero, 9)),
    );
    const { chart, signals, lastGood } = currentRun(history);
    // Steps of 0.5: 3.5 ± 3 · 0.5/1.128.
    expect(chart?.upper).toBeCloseTo(3.5 + 1.5 / 1.128, 9);
    expect(signals).toEqual([]);
    expect(lastGood?.inspection).toBe('i10');
  });

  it('tells that it has moved, and when it was last found good', async () => {
    const zeros = [3, 3.1, 2.9, 3, 3.1, 2.9, 3, 3.1, 2.9, 3, 3.1, 9];
    const { signals, lastGood } = currentRun(
      await gather(...zeros.map((zero, hour) => at(hour, zero))),
    );
    expect(signals.map(({ rule }) => rule)).toContain('beyond the limits');
    expect(lastGood?.inspection).toBe('i10');
  });

  it('begins a new run where it was set anew, until that is taken back', async () => {
    // The clock stands at 14:07.
    const history = await gather(at(8, 3), at(9, 3), at(20, 7));
    setAnew(history.name);
    expect(currentRun(history).points.map(({ inspection }) => inspection)).toEqual(['i20']);
    expect(currentRun(history).chart).toBeUndefined();
    takeBackSetAnew(history.name);
    expect(currentRun(history).points).toHaveLength(3);
    await saving('saved');
  });
});

it('a comparator that has a name is followed by itself, also once it is called otherwise', async () => {
  const by = (hour: number, name: string): InspectionRecord => {
    const read = at(hour, 3);
    const setups = read.setups.map((setup) =>
      setup.kind === 'nose comparator' ? { ...setup, instrument: { id: 'first', name } } : setup,
    );
    return { ...read, setups };
  };
  await gather(at(8, 5), by(9, 'Old name'), by(10, 'Square 1'));
  expect(comparatorHistories.value.map(({ title, points }) => [title, points.length])).toEqual([
    [NAME, 1],
    [`Square 1: ${NAME}`, 2],
  ]);
});

it('readings that are still open and fix less than is asked say nothing of the comparator', () => {
  const word = compared('i', '34', '31').setups.slice(0, 1);
  expect(comparatorsIn({ ...compared('i', '34', '31'), setups: word }, BLOCK)).toEqual([]);
  expect(comparatorsIn(compared('i', '34', '31'), BLOCK)).toHaveLength(1);
});

it('the lean of a column is told over the length asked for, with the same limits and signals', async () => {
  const leaning = (hour: number): InspectionRecord => {
    const read = at(hour, 3);
    return { ...read, setups: [...read.setups.slice(1), columnSetup()] };
  };
  const history = await gather(leaning(8), leaning(9));
  // Up the right 27 µm over 70 mm, up the left 17: the mean is the column's own, as the sides are taken as parallel.
  const slope = 22 / 70;
  expect(history).toMatchObject({ kind: 'lean' });
  for (const [length, lean] of [
    [100, slope * 100],
    [25.4, slope * 25.4],
  ] as const) {
    const { points, chart } = currentRun(history, length);
    expect(points.map(({ value }) => value)).toEqual([0, 1].map(() => expect.closeTo(lean, 6)));
    expect(chart?.centre).toBeCloseTo(lean, 6);
    expect(points[0]!.expanded / points[0]!.value).toBeCloseTo(
      history.points[0]!.expanded / history.points[0]!.value,
      9,
    );
  }
});

it('a zero is told as it is, whatever length a lean is told over', async () => {
  const history = await gather(at(8, 3));
  expect(currentRun(history, 25.4).points).toEqual(history.points);
});
