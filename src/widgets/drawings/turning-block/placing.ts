import { LINE, type Point, textWidth } from '../geometry';
import { boxAt, holds, meet, middleOf, pointBetween, type Shape } from './convex';
import type { Room } from './room';

/** Lines of text that stand together, and where: `at` is their middle. */
export interface Label {
  readonly lines: readonly string[];
  readonly at: Point;
  readonly box: Shape;
  /** From the text to what it names, where it stands away from it. */
  readonly leader?: readonly [Point, Point];
}

/** Between a text and what else is there. */
export const CLEAR = 3;

const SHARES = [0.5, 0.38, 0.62, 0.28, 0.72, 0.2, 0.8];
/** Places on a face as shares of its sides, the middle first. */
const PLACES = SHARES.flatMap((along) => SHARES.map((up) => ({ along, up }))).sort(
  (a, b) => offMiddle(a) - offMiddle(b),
);

const NOWHERE: Point = { x: 0, y: 0 };

function offMiddle({ along, up }: { along: number; up: number }): number {
  return Math.hypot(along - 0.5, up - 0.5);
}

/** A name on its face, as near to the middle as there is room; undefined where there is none. */
export function nameWithin(name: string, face: Shape, room: Room): Label | undefined {
  const box = freeBox(face, textWidth(name), LINE - 3, room);
  return box && { lines: [name], at: middleOf(box), box };
}

/** A place on a face that a leader may end at: the middle, or where that is taken beside it. */
export function placeWithin(face: Shape, room: Room): Point {
  const dot = freeBox(face, 4, 4, room);
  return middleOf(dot ?? face);
}

function freeBox(face: Shape, width: number, height: number, { taken }: Room): Shape | undefined {
  return PLACES.map(({ along, up }) => boxAt(pointWithin(face, along, up), width, height)).find(
    (box) => holds(face, box, CLEAR) && !taken.some((one) => meet(one, box, CLEAR)),
  );
}

/** A point of a shape with four corners, as shares of its sides. */
function pointWithin([a = NOWHERE, b = a, c = a, d = a]: Shape, along: number, up: number): Point {
  return pointBetween(pointBetween(a, b, along), pointBetween(d, c, along), up);
}
