import type { Triple } from '../../../core/part/block';
import { DRAWING_WIDTH, LINE, type Point } from '../geometry';
import { outlineOf } from './block-points';
import type { DrawnBlock } from './drawn-block';
import { dot } from './space';
import { type Eye, MOST_TILT } from './view';

/** How the block lies on the sheet: the same however it is turned, so that it keeps its size and place. */
export interface Sheet {
  readonly height: number;
  readonly centre: Point;
  /** Units of the drawing per mm of the block's longest side. */
  readonly scale: number;
}

/** Beside the block at its widest, and above and below it at its highest. */
const MARGIN = { side: 26, foot: 2 * LINE - 2 } as const;
const MOST_HEIGHT = 252;

export function sheetFor(block: DrawnBlock): Sheet {
  const corners = [...outlineOf(block, 'top'), ...outlineOf(block, 'bottom')];
  const reach = Math.max(...corners.map(({ x, y }) => Math.hypot(x, y)));
  const rise = Math.max(...corners.map(riseOf));
  const scale = Math.min((DRAWING_WIDTH / 2 - MARGIN.side) / reach, MOST_HEIGHT / 2 / rise);
  const height = 2 * (rise * scale + MARGIN.foot);
  return { height, centre: { x: DRAWING_WIDTH / 2, y: height / 2 }, scale };
}

/** How far a point of the block can come above or below the middle of the picture in any view. */
function riseOf({ x, y, z }: Triple): number {
  const aside = Math.hypot(x, y);
  const steepest = Math.atan2(aside, Math.abs(z));
  const tilt = Math.min((MOST_TILT * Math.PI) / 180, steepest);
  return Math.abs(z) * Math.cos(tilt) + aside * Math.sin(tilt);
}

/** Where a point of the block comes on the sheet. */
export function onSheet({ centre, scale }: Sheet, { right, up }: Eye, point: Triple): Point {
  return {
    x: centre.x + scale * dot(right, point),
    y: centre.y - scale * dot(up, point),
  };
}
