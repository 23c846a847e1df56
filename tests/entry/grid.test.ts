import { describe, expect, it } from 'vitest';
import { axesInFace, FACES, oppositeFace } from '../../src/core/part/faces';
import { withGrid } from '../../src/entry/grid';
import { readSetups } from '../../src/entry/read-setups';
import type { OverFaceSetup } from '../../src/entry/setup-entry';
import { countedIds } from './support/ids';
import { overFaceSetup } from './support/over-face';
import { PART } from './support/part';
import { micro, mm, tenths } from './support/typed';

const METRIC = { size: 'mm', reading: 'µm' } as const;
const INCH = { size: 'in', reading: 'tenths' } as const;

/** The places as they are read, once something is typed at each. */
function pointsOf(setup: OverFaceSetup) {
  const places = setup.places.map((place, at) => ({ ...place, reading: micro(String(at)) }));
  const { readings, problems } = readSetups([{ ...setup, places }], PART);
  expect([...problems]).toEqual([]);
  return readings.map((reading) => {
    if (reading.kind !== 'over the top') throw new Error('Another kind of reading');
    expect(reading.value).toBe(Number(reading.id.split(' ')[1]) - 1);
    return reading.point;
  });
}

const distinct = (values: readonly number[]) => [...new Set(values)].sort((a, b) => a - b);

describe('a grid over a face', () => {
  it('runs row by row, a tenth of the face away from its edges', () => {
    const { places, ...rest } = withGrid(
      overFaceSetup([['1', '2', '3']]),
      PART,
      [3, 2],
      METRIC,
      countedIds(),
    );
    expect(rest).toEqual({ kind: 'over the top', id: 'over', faces: ['top', 'bottom'] });
    // The top is 60 mm across and 40 mm up.
    expect(places).toEqual(
      [
        ['4', '6'],
        ['4', '30'],
        ['4', '54'],
        ['36', '6'],
        ['36', '30'],
        ['36', '54'],
      ].map(([up, across], at) => ({
        id: `id ${at + 1}`,
        up: mm(up!),
        across: mm(across!),
        reading: micro(''),
      })),
    );
  });

  it.each(
    FACES.flatMap((face) => ([METRIC, INCH] as const).map((units) => [face, units.size] as const)),
  )('is even, within the face, and read back where it was meant: %s in %s', (face, size) => {
    const units = size === 'mm' ? METRIC : INCH;
    const empty = overFaceSetup([], 'over the top', [face, oppositeFace(face)]);
    const grid = withGrid(empty, PART, [5, 4], units, countedIds());
    expect(grid.places).toHaveLength(20);
    const points = pointsOf(grid);
    // Typed to 0.1 mm or 0.001 in.
    const rounding = size === 'mm' ? 0.051 : 0.0128;
    const counts = axesInFace(face).map((axis) => {
      const length = PART.block.size[axis];
      const along = distinct(points.map((point) => point[axis]));
      along.forEach((place, at) => {
        const meant = length * (-0.4 + (0.8 * at) / (along.length - 1));
        expect(Math.abs(place - meant)).toBeLessThan(rounding);
      });
      return along.length;
    });
    expect([...counts].sort()).toEqual([4, 5]);
    expect(new Set(points.map(({ x, y, z }) => `${x} ${y} ${z}`)).size).toBe(20);
  });

  it('is empty to be read, in the unit of the shop', () => {
    const { places } = withGrid(overFaceSetup([]), PART, [2, 2], INCH, countedIds());
    expect(places.map(({ reading }) => reading)).toEqual(places.map(() => tenths('')));
    expect(places[3]?.up).toEqual({ text: '1.417', unit: 'in' });
  });
});
