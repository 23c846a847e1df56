import type { Point } from '../geometry';
import { boxAt, holds, meet, middleOf, pointBetween, type Shape, sidesOf } from './convex';
import type { Room } from './room';
import type { ShownDatum } from './shown-block';
import { dot } from './space';
import { faceIn, isInSight, type Stage } from './stage';

/**
 * The datum feature indicator of ISO 5459 (from memory): a triangle that stands on the face, a line
 * from its tip, and the letter in a box. The triangle points the way the face looks; the line goes on
 * that way where there is room, else it turns aside.
 */
export interface DatumMark {
  readonly letter: string;
  readonly triangle: Shape;
  readonly leader: Shape;
  readonly box: Shape;
  /** The middle of the box. */
  readonly at: Point;
}

/** Side of the box, and half the foot and the height of the triangle. */
const BOX = 22;
const HALF_FOOT = 7;
const TALL = 11;
const LEADERS = [8, 14, 20, 28, 36, 48, 60, 76];
/** Angles that the line turns aside by. */
const ASIDES = [0, 0.7, -0.7, 1.4, -1.4];
/** Along the edge that the face looks past. */
const PLACES = [0.5, 0.32, 0.68, 0.2, 0.8];
/** From that edge to the middle of a face in sight, which the triangle stands on. */
const INWARD = 0.3;

interface Footing {
  readonly at: Point;
  /** Along the edge, and out of the face; of length 1. */
  readonly along: Point;
  readonly out: Point;
}

export function datumMark(stage: Stage, { face, letter }: ShownDatum, room: Room): DatumMark {
  const stands = footings(stage, face);
  const marks = ASIDES.flatMap((aside) =>
    stands.flatMap((footing) => LEADERS.map((leader) => markAt(letter, footing, leader, aside))),
  );
  const occupied = [...room.taken, ...room.uncrossed];
  const free = marks.filter(
    ({ box, triangle }) =>
      holds(room.sheet, box) &&
      !occupied.some((one) => meet(one, box, 3) || meet(one, triangle, 1)),
  );
  // Best beside the block, else over it.
  return free.find(({ box }) => !meet(room.block, box, 2)) ?? free[0] ?? (marks[0] as DatumMark);
}

/** Where the triangle may stand: on the edge that the face looks past, or within a face in sight. */
function footings(stage: Stage, face: ShownDatum['face']): readonly Footing[] {
  const shape = faceIn(stage, face);
  const out = wayOut(stage, face);
  const centre = middleOf(shape);
  const looks = sidesOf(shape).map(({ middle, across }) => {
    const away = across.x * (middle.x - centre.x) + across.y * (middle.y - centre.y);
    return Math.sign(away) * (across.x * out.x + across.y * out.y);
  });
  const index = looks.indexOf(Math.max(...looks));
  const [from = centre, to = centre] = [shape[index], shape[(index + 1) % shape.length]];
  const along = unit({ x: to.x - from.x, y: to.y - from.y });
  return PLACES.map((share) => {
    const edge = pointBetween(from, to, share);
    return { at: isInSight(stage, face) ? pointBetween(edge, centre, INWARD) : edge, along, out };
  });
}

/** Where the outward normal of a face points on the sheet, with length 1. */
function wayOut({ block, eye }: Stage, face: ShownDatum['face']): Point {
  const { normal } = block.faces[face];
  return unit({ x: dot(normal, eye.right), y: -dot(normal, eye.up) });
}

function markAt(letter: string, footing: Footing, leader: number, aside: number): DatumMark {
  const { at: foot, along, out } = footing;
  const end = (share: number) => moved(foot, along, share * HALF_FOOT);
  const tip = moved(foot, out, TALL);
  const [cos, sin] = [Math.cos(aside), Math.sin(aside)];
  const way = { x: cos * out.x - sin * out.y, y: sin * out.x + cos * out.y };
  // From the middle of the box to its side.
  const half = BOX / 2 / Math.max(Math.abs(way.x), Math.abs(way.y));
  const at = moved(tip, way, leader + half);
  return {
    letter,
    triangle: [end(-1), end(1), tip],
    leader: [tip, moved(tip, way, leader)],
    box: boxAt(at, BOX, BOX),
    at,
  };
}

function moved({ x, y }: Point, way: Point, by: number): Point {
  return { x: x + by * way.x, y: y + by * way.y };
}

/** A direction with length 1; down where there is none. */
function unit({ x, y }: Point): Point {
  const length = Math.hypot(x, y);
  return length < 0.02 ? { x: 0, y: 1 } : { x: x / length, y: y / length };
}
