import { RANK_TOLERANCE } from '../../adjustment/least-squares';
import { type Axis, axesOf } from './axes';
import { type Columns, columnsOf } from './columns';
import type { Numbers } from './points';
import { add, dot, greatestSize } from './vectors';

/** A place, or something for each mm, in the two directions of a face. */
export interface InFace {
  readonly u: number;
  readonly v: number;
}

/** What the places of the points spread over. */
export type Spread = 'point' | 'line' | 'face';

/** The places of points as the columns of a fit, so that neither unit nor offset sways it. */
export interface Places {
  readonly spread: Spread;
  /** Mean place, mm. */
  readonly middle: InFace;
  /** Ones, then an axis for each direction that the places spread in, square to each other. */
  readonly columns: Columns;
  /** How fast each axis grows, per mm; nothing for one that is not there. */
  readonly gradients: readonly [InFace, InFace];
}

const LEVEL: InFace = { u: 0, v: 0 };

/**
 * The places of points, mm, whose numbers become its columns.
 *
 * Places on one line in the face say nothing about the slope across that line, which is then 0.
 */
export function placesOf(numbers: Numbers): Places {
  const { u, v } = axesOf(numbers);
  const axes = squareAxes(u, v);
  return {
    spread: (['point', 'line', 'face'] as const)[axes.length]!,
    middle: { u: u.middle, v: v.middle },
    columns: columnsOf([numbers.ones, ...axes.map(({ values }) => values)]),
    gradients: [axes[0]?.gradient ?? LEVEL, axes[1]?.gradient ?? LEVEL],
  };
}

interface SquareAxis {
  readonly values: Float64Array;
  readonly gradient: InFace;
}

function squareAxes(u: Axis, v: Axis): readonly SquareAxis[] {
  if (v.scale === 0) return u.scale === 0 ? [] : [alone(u)];
  if (u.scale === 0) return [{ values: v.values, gradient: { u: 0, v: 1 / v.scale } }];
  const share = makeSquare(u.values, v.values);
  if (greatestSize(v.values) <= Math.max(RANK_TOLERANCE, u.blur + v.blur)) {
    return [onOneLine(u, (share * v.scale) / u.scale)];
  }
  return [alone(u), { values: v.values, gradient: { u: -share / u.scale, v: 1 / v.scale } }];
}

/**
 * Takes off `v` its share of `u`, and returns that. Gram and Schmidt, twice: once more is enough
 * (Giraud et al., Numerische Mathematik 101, 2005).
 */
function makeSquare(u: Float64Array, v: Float64Array): number {
  const square = dot(u, u);
  let share = 0;
  for (let round = 0; round < 2; round += 1) {
    const part = dot(u, v) / square;
    add(v, -part, u);
    share += part;
  }
  return share;
}

function alone({ values, scale }: Axis): SquareAxis {
  return { values, gradient: { u: 1 / scale, v: 0 } };
}

/** The axis of places with v = rise·u: level across, so that its gradient points along them. */
function onOneLine({ values, scale }: Axis, rise: number): SquareAxis {
  const along = 1 / (scale * (1 + rise * rise));
  return { values, gradient: { u: along, v: rise * along } };
}
