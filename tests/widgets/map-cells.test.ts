import { describe, expect, it } from 'vitest';
import { cellsOf, gridOf, type MapPlace } from '../../src/widgets/drawings/map-cells';

const grid = (columns: readonly number[], rows: readonly number[]): MapPlace[] =>
  rows.flatMap((up) => columns.map((across) => ({ across, up })));

const FRAME = { x: 10, y: 20, width: 60, height: 80 };

describe('the cells of a map', () => {
  it('are those of a full grid, in any order of the places', () => {
    const places = grid([5, 30, 55], [5, 85]);
    const found = { columns: [5, 30, 55], rows: [5, 85] };
    expect(gridOf(places)).toEqual(found);
    expect(gridOf([...places].reverse())).toEqual(found);
  });

  it('take in distances that differ by no more than the typing', () => {
    expect(gridOf([...grid([5, 30], [5]), ...grid([5.004, 30], [85])])).toMatchObject({
      columns: [5, 30],
    });
  });

  it.each([
    ['one is missing', grid([5, 55], [5, 85]).slice(1)],
    ['one is read twice', [...grid([5, 55], [5, 85]), { across: 5, up: 5 }]],
    [
      'they lie anyhow',
      [
        { across: 1, up: 1 },
        { across: 2, up: 5 },
        { across: 7, up: 3 },
      ],
    ],
  ])('are none where %s', (_, places) => {
    expect(gridOf(places)).toBeUndefined();
  });

  it('fill the face without a gap, the lowest row at the foot', () => {
    const places = grid([5, 55], [5, 85]);
    const cells = cellsOf(places, gridOf(places)!, FRAME);
    expect(cells[0]).toEqual({ x: 10, y: 60, width: 30, height: 40 });
    expect(cells[3]).toEqual({ x: 40, y: 20, width: 30, height: 40 });
  });
});
