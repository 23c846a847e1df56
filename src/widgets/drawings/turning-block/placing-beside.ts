import { boldWidth, LINE, type Point, wrapped } from '../geometry';
import { boxAt, holds, meet, middleOf, type Shape } from './convex';
import { CLEAR, type Label } from './placing';
import type { Room } from './room';

/** A text outside the block is broken to one of these widths. */
const WIDTHS = [210, 130, 112];
const DIRECTIONS = Array.from({ length: 16 }, (_, index) => (index * Math.PI) / 8);
const DISTANCES = [8, 14, 21, 29, 38, 48, 60, 74, 90, 108, 128, 150];
/** How far a text may stand aside of its leader, as shares of its width. */
const ASIDES = [0, 0.35, -0.35];
/** Nearer than this, a text needs no leader. */
const NEAR = 10;

/**
 * A text outside the block, as near to one of its `targets` as there is room: the first rather than
 * the last, straight out rather than round a corner or over the block. Where there is no room, its
 * line may cross what it should not, and at last the text stands on the block.
 */
export function textBeside(text: string, targets: readonly Point[], room: Room): Label | undefined {
  const ways = waysTo(targets, room);
  // Each number of lines once, in the narrowest way.
  const wraps = new Map(WIDTHS.map((width) => wrapped(text, width)).map((on) => [on.length, on]));
  const blocks = [...wraps.values()].map(blockOf);
  const { taken, uncrossed } = room;
  const rooms: readonly Room[] = [
    { ...room, uncrossed: [...taken, ...uncrossed] },
    { ...room, uncrossed: taken },
    { ...room, block: [], taken: [...taken, ...uncrossed], uncrossed: taken },
    { ...room, block: [], uncrossed: [] },
  ];
  for (const each of rooms) {
    const label = firstFree(blocks, ways, each);
    if (label !== undefined) return label;
  }
  return undefined;
}

interface TextBlock {
  readonly lines: readonly string[];
  readonly width: number;
  readonly height: number;
}

function blockOf(lines: readonly string[]): TextBlock {
  return {
    lines,
    width: Math.max(...lines.map(boldWidth)),
    height: lines.length * LINE - 3,
  };
}

interface Way {
  readonly target: Point;
  readonly dx: number;
  readonly dy: number;
  readonly distance: number;
  readonly cost: number;
}

/** Ways from the targets to a text, the best first. */
function waysTo(targets: readonly Point[], { sheet, block }: Room): readonly Way[] {
  const centre = middleOf(sheet);
  return targets
    .flatMap((target, rank) => {
      const out = Math.atan2(target.y - centre.y, target.x - centre.x);
      return DIRECTIONS.flatMap((direction) => {
        const [dx, dy] = [Math.cos(direction), Math.sin(direction)];
        const over = holds(block, [{ x: target.x + 12 * dx, y: target.y + 12 * dy }]) ? 50 : 0;
        const turned = 6 * rank + 20 * (1 - Math.cos(direction - out)) + over;
        return DISTANCES.map((distance) => ({ target, dx, dy, distance, cost: distance + turned }));
      });
    })
    .sort((one, other) => one.cost - other.cost);
}

function firstFree(
  blocks: readonly TextBlock[],
  ways: readonly Way[],
  room: Room,
): Label | undefined {
  for (const way of ways) {
    for (const block of blocks) {
      const label = placed(block, way, room);
      if (label !== undefined) return label;
    }
  }
  return undefined;
}

function placed({ lines, width, height }: TextBlock, way: Way, room: Room): Label | undefined {
  const { target, dx, dy, distance } = way;
  const along = (reach: number) => ({ x: target.x + dx * reach, y: target.y + dy * reach });
  // From the middle of the text to where the way to the target leaves its box.
  const half = Math.min(width / 2 / Math.abs(dx), height / 2 / Math.abs(dy));
  const middle = along(distance + half);
  const leader = [along(distance - 3), target] as const;
  for (const aside of Math.abs(dx * half) < width / 10 ? ASIDES : [0]) {
    const at = { x: middle.x + aside * width, y: middle.y };
    const box = boxAt(at, width, height);
    if (isFree(box, leader, room)) return { lines, at, box, ...(distance > NEAR && { leader }) };
  }
  return undefined;
}

function isFree(box: Shape, leader: Shape, room: Room): boolean {
  return (
    holds(room.sheet, box) &&
    !meet(room.block, box, CLEAR) &&
    !room.taken.some((one) => meet(one, box, CLEAR)) &&
    !room.uncrossed.some((one) => meet(one, leader, 1))
  );
}
