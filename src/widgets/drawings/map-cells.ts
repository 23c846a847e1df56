import type { Frame } from './face-frame';

/** A place on the face, mm in from the left and up from the bottom edge of the drawing. */
export interface MapPlace {
  readonly across: number;
  readonly up: number;
}

/** Places that make a full grid: the distinct distances, in order. */
export interface Grid {
  readonly columns: readonly number[];
  readonly rows: readonly number[];
}

/** Distances closer than this are the same, mm. */
const SAME = 0.01;

/** The grid that the places make; undefined where they make none, or one is missing or read twice. */
export function gridOf(places: readonly MapPlace[]): Grid | undefined {
  const columns = distinct(places.map(({ across }) => across));
  const rows = distinct(places.map(({ up }) => up));
  const cells = new Set(
    places.map(({ across, up }) => `${nearest(columns, across)} ${nearest(rows, up)}`),
  );
  const isFull = cells.size === places.length && cells.size === columns.length * rows.length;
  return isFull ? { columns, rows } : undefined;
}

/** The part of `frame` that is nearest to each place of the grid, in the order of the places. */
export function cellsOf(places: readonly MapPlace[], grid: Grid, frame: Frame): readonly Frame[] {
  const [columnEnds, rowEnds] = [ends(grid.columns.length), ends(grid.rows.length)];
  return places.map(({ across, up }) => {
    const [left, right] = columnEnds(nearest(grid.columns, across));
    const [bottom, top] = rowEnds(nearest(grid.rows, up));
    return {
      x: frame.x + left * frame.width,
      y: frame.y + (1 - top) * frame.height,
      width: (right - left) * frame.width,
      height: (top - bottom) * frame.height,
    };
  });
}

/** All cells are drawn alike, so that every number has the same room. */
function ends(count: number) {
  return (index: number) => [index / count, (index + 1) / count] as const;
}

function distinct(distances: readonly number[]): readonly number[] {
  const sorted = [...distances].sort((a, b) => a - b);
  return sorted.filter((distance, i) => distance - (sorted[i - 1] ?? -Infinity) > SAME);
}

function nearest(sorted: readonly number[], distance: number): number {
  const gaps = sorted.map((one) => Math.abs(one - distance));
  return gaps.indexOf(Math.min(...gaps));
}
