import { boldWidth, LINE, type Point } from './geometry';

export interface Box extends Point {
  readonly width: number;
  readonly height: number;
}

interface PlacedText extends Point {
  readonly anchor: 'start' | 'middle' | 'end';
  /** True where it lies wholly on the face. */
  readonly inside: boolean;
}

interface TextsToPlace {
  readonly dots: readonly Point[];
  /** A text for each dot; an empty one needs no place. */
  readonly texts: readonly string[];
  /** Of the dots. */
  readonly radius: number;
  readonly face: Box;
  /** What the texts stay within. */
  readonly bounds: Box;
  /** What they keep off. */
  readonly taken: readonly Box[];
}

/**
 * Where to write each text beside its dot: under, over, right or left of it, rather on the face than off it,
 * clear of all dots and of the texts before it. Undefined where nothing is free.
 */
export function placeTexts(wanted: TextsToPlace): readonly (PlacedText | undefined)[] {
  const { dots, texts, radius, face, bounds, taken } = wanted;
  const boxes = [...taken, ...dots.map((dot) => around(dot, 2 * radius, 2 * radius))];
  return dots.map((dot, index) => {
    const text = texts[index] ?? '';
    const free = candidates(dot, radius + 4, boldWidth(text)).filter(
      ({ box }) => isWithin(box, bounds) && !boxes.some((other) => overlap(box, other)),
    );
    const found = free.find(({ box }) => isWithin(box, face)) ?? free[0];
    if (text === '' || found === undefined) return undefined;
    boxes.push(found.box);
    return { ...found.place, inside: isWithin(found.box, face) };
  });
}

function candidates(dot: Point, radius: number, width: number) {
  const beside = radius + 2 + width / 2;
  const over = radius + LINE / 2 - 1;
  const aside = Math.max(0, width / 2 - radius / 2);
  const diagonal = LINE * 0.8;
  const shifts = [
    [0, 0, over],
    [0, 0, -over],
    [0, aside, over],
    [0, -aside, over],
    [0, aside, -over],
    [0, -aside, -over],
    [1, beside, 0],
    [-1, -beside, 0],
    [1, beside, diagonal],
    [1, beside, -diagonal],
    [-1, -beside, diagonal],
    [-1, -beside, -diagonal],
  ] as const;
  return shifts.map(([side, dx, dy]) => {
    const middle = { x: dot.x + dx, y: dot.y + dy };
    const anchor =
      side === 0 ? ('middle' as const) : side === 1 ? ('start' as const) : ('end' as const);
    return {
      place: { x: middle.x - (side * width) / 2, y: middle.y, anchor },
      box: around(middle, width, LINE),
    };
  });
}

function around(middle: Point, width: number, height: number): Box {
  return { x: middle.x - width / 2, y: middle.y - height / 2, width, height };
}

function isWithin(box: Box, bounds: Box): boolean {
  return (
    box.x >= bounds.x &&
    box.y >= bounds.y &&
    box.x + box.width <= bounds.x + bounds.width &&
    box.y + box.height <= bounds.y + bounds.height
  );
}

function overlap(a: Box, b: Box): boolean {
  return a.x < b.x + b.width && b.x < a.x + a.width && a.y < b.y + b.height && b.y < a.y + a.height;
}
