import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  axisNumber,
  axisRange,
  type ChartData,
  markPlaces,
  partOfChart,
} from '../../../src/widgets/charts/chart-data';

const NOTHING: ChartData = { points: [], levels: [], marks: [], unit: 'µm' };

const point = (value: number, expanded = 0) => {
  return {
    name: '',
    value,
    low: value - expanded,
    high: value + expanded,
    kind: 'plain',
    text: '',
  } as const;
};

describe('the axis of a chart', () => {
  it('holds every bar and every level, and some room', () => {
    const levels = [{ value: 5, from: 0, to: 1, kind: 'limit' }] as const;
    const [least, greatest] = axisRange({ ...NOTHING, points: [point(2, 1), point(3, 1)], levels });
    // From 1 to 5, with 8 % of that above and below.
    expect([least, greatest]).toEqual([expect.closeTo(0.68, 9), expect.closeTo(5.32, 9)]);
  });

  it('is never without height and never without a number', () => {
    const number = fc.oneof(fc.double(), fc.constantFrom(0, Number.NaN, Number.POSITIVE_INFINITY));
    fc.assert(
      fc.property(fc.array(fc.tuple(number, number), { maxLength: 4 }), (some) => {
        const points = some.map(([value, expanded]) => point(value, expanded));
        const [least, greatest] = axisRange({ ...NOTHING, points });
        fc.pre(Math.abs(least) < 1e300 && Math.abs(greatest) < 1e300);
        expect(greatest).toBeGreaterThan(least);
      }),
    );
  });
});

it('marks stand before their point, several of them side by side', () => {
  const marks = [1, 3, 3].map((before) => ({ before, text: '' }));
  expect(markPlaces(marks)).toEqual([0.5, expect.closeTo(2 + 1 / 3), expect.closeTo(2 + 2 / 3)]);
});

it('a part of a chart has the points, levels and marks of its own', () => {
  const data: ChartData = {
    unit: 'µm',
    points: [1, 2, 3, 4, 5].map((value) => point(value)),
    levels: [
      { value: 9, from: 0, to: 4, kind: 'limit' },
      { value: 8, from: 0, to: 1, kind: 'limit' },
    ],
    marks: [1, 3, 4].map((before) => ({ before, text: `before ${before}` })),
  };
  const part = partOfChart(data, 2, 4);
  expect(part.points.map(({ value }) => value)).toEqual([3, 4]);
  expect(part.levels).toEqual([{ value: 9, from: 0, to: 1, kind: 'limit' }]);
  expect(part.marks).toEqual([{ before: 1, text: 'before 3' }]);
  expect(partOfChart(data, 9, 5)).toEqual(data);
});

it('numbers of the axis have as many digits as they need', () => {
  expect([0, -0, 2.5, -10, 0.1 + 0.2, 0.00004].map(axisNumber)).toEqual([
    '0',
    '0',
    '2.5',
    '−10',
    '0.3',
    '0.00004',
  ]);
});
