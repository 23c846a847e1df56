import type { Point } from '../geometry';

/** The corners of a convex shape, going round it; two points are a line. */
export type Shape = readonly Point[];

/** A box about its middle. */
export function boxAt({ x, y }: Point, width: number, height: number): Shape {
  const [w, h] = [width / 2, height / 2];
  return [
    { x: x - w, y: y - h },
    { x: x + w, y: y - h },
    { x: x + w, y: y + h },
    { x: x - w, y: y + h },
  ];
}

/** `a` + `share` · (`b` − `a`). */
export function pointBetween(a: Point, b: Point, share: number): Point {
  return { x: a.x + share * (b.x - a.x), y: a.y + share * (b.y - a.y) };
}

/** The mean of the corners. */
export function middleOf(shape: Shape): Point {
  const sum = shape.reduce((total, { x, y }) => ({ x: total.x + x, y: total.y + y }), {
    x: 0,
    y: 0,
  });
  return { x: sum.x / shape.length, y: sum.y / shape.length };
}

/** True where two shapes come nearer to each other than `gap`, seen square to their sides. */
export function meet(one: Shape, other: Shape, gap = 0): boolean {
  return !areApart(one, other, gap);
}

function areApart(one: Shape, other: Shape, gap: number): boolean {
  // Most shapes are far apart: the two quick directions first.
  const [a, b] = [boundsOf(one), boundsOf(other)];
  if (isBetween(a.level, b.level, gap) || isBetween(a.upright, b.upright, gap)) return true;
  const isAcross = ({ across }: Side) => isBetween(extent(one, across), extent(other, across), gap);
  return sidesOf(one).some(isAcross) || sidesOf(other).some(isAcross);
}

function isBetween(a: Extent, b: Extent, gap: number): boolean {
  return a.from >= b.to + gap || b.from >= a.to + gap;
}

/** True where `inner` lies wholly within `outer`, and `gap` from its sides. */
export function holds(outer: Shape, inner: Shape, gap = 0): boolean {
  return sidesOf(outer).every(({ across }) => {
    const [a, b] = [extent(outer, across), extent(inner, across)];
    // A side of a convex shape is the end of its extent square to that side.
    return b.from >= a.from + gap && b.to <= a.to - gap;
  });
}

/** The smallest convex shape about some points. */
export function hullOf(points: Shape): Shape {
  const sorted = [...points].sort((a, b) => a.x - b.x || a.y - b.y);
  return [...chain(sorted), ...chain(sorted.reverse())];
}

function chain(sorted: Shape): Shape {
  const kept: Point[] = [];
  for (const point of sorted) {
    while (kept.length >= 2 && turnAt(kept.at(-2), kept.at(-1), point) <= 0) kept.pop();
    kept.push(point);
  }
  return kept.slice(0, -1);
}

function turnAt(a: Point | undefined, b: Point | undefined, c: Point): number {
  return a && b ? (b.x - a.x) * (c.y - a.y) - (b.y - a.y) * (c.x - a.x) : 0;
}

interface Side {
  readonly middle: Point;
  /** Square to the side, of length 1; to either hand. */
  readonly across: Point;
}

/** The sides of a shape that are longer than nothing. A shape is held against many others: once for each. */
export const sidesOf = oncePer((shape): readonly Side[] =>
  shape.flatMap((from, index) => {
    const to = shape[(index + 1) % shape.length] ?? from;
    const length = Math.hypot(to.x - from.x, to.y - from.y);
    if (length < 1e-9) return [];
    const across = { x: (to.y - from.y) / length, y: (from.x - to.x) / length };
    return [{ middle: pointBetween(from, to, 0.5), across }];
  }),
);

const LEVEL: Point = { x: 1, y: 0 };
const UPRIGHT: Point = { x: 0, y: 1 };

const boundsOf = oncePer((shape) => ({
  level: extent(shape, LEVEL),
  upright: extent(shape, UPRIGHT),
}));

/** `make`, called once for each shape. */
function oncePer<T>(make: (shape: Shape) => T): (shape: Shape) => T {
  const made = new WeakMap<Shape, { readonly value: T }>();
  return (shape) => {
    const known = made.get(shape) ?? { value: make(shape) };
    made.set(shape, known);
    return known.value;
  };
}

interface Extent {
  readonly from: number;
  readonly to: number;
}

/** From where to where a shape reaches in one direction. */
function extent(shape: Shape, along: Point): Extent {
  let [from, to] = [Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY];
  for (const { x, y } of shape) {
    const place = x * along.x + y * along.y;
    if (place < from) from = place;
    if (place > to) to = place;
  }
  return { from, to };
}
