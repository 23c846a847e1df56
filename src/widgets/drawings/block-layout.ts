import { clamp, DRAWING_WIDTH, drawable, fitted, LINE, type Point, widest } from './geometry';
import { type DrawnLeans, drawnLeans, type Leans, roomForLeans } from './leans';

export type Side = 'left' | 'right';

/** What the layout of a block on the plate depends on. */
export interface BlockToLayOut {
  /** mm between the two faces. */
  readonly width: number;
  /** mm above the base. */
  readonly height: number;
  readonly leans?: Leans | undefined;
  /** The side that the instrument stands on. */
  readonly tool?: Side | undefined;
  /** Texts beside the instrument. */
  readonly readings: readonly string[];
  /** Texts of the heights, on the other side. */
  readonly heights: readonly string[];
}

/** Where everything stands, in units of the drawing. */
export interface BlockLayout {
  readonly top: number;
  /** The surface of the plate. */
  readonly plate: number;
  readonly left: number;
  readonly right: number;
  readonly leans: DrawnLeans;
  /** Where the pillar of the instrument stands. */
  readonly pillar: number;
  /** Where the rule of heights stands. */
  readonly rule: number;
  /** mm above the base. */
  readonly blockHeight: number;
}

/** Room above the block for its name and for what reaches over it. */
const ABOVE = 30;
/** About 9 % of the width. */
const REACH = 30;
/** Of the block's width: room for the names on it. */
const LEAST = 76;
const MARGIN = 8;
/** From the pillar to the edge. */
const PILLAR_ROOM = 26;
const RULE_ROOM = 28;

export function layOut(block: BlockToLayOut): BlockLayout {
  const { tool = 'right', readings, heights } = block;
  const gap = Math.max(62, widest(readings) + 24);
  const toolRoom = block.tool === undefined ? MARGIN : gap + PILLAR_ROOM;
  const ruleRoom = heights.length === 0 ? MARGIN : RULE_ROOM + Math.min(widest(heights), 110);
  const out = roomForLeans(block.leans, REACH);

  const room = DRAWING_WIDTH - toolRoom - ruleRoom - out.left - out.right;
  const { width, height: proportioned } = fitted(block.width, block.height, {
    width: [LEAST, Math.max(LEAST, Math.min(room, 210))],
    height: [72, 210],
  });
  const height = Math.max(proportioned, heights.length * LINE + 12);
  const leans = drawnLeans(block.leans, height, Math.min(REACH, width * 0.22, height * 0.3));

  const before = (tool === 'left' ? toolRoom : ruleRoom) + out.left;
  const left = before + Math.max(0, room - width) / 2;
  const right = left + width;
  const faces = {
    left: left - Math.max(0, leans.left),
    right: right + Math.max(0, leans.right),
  };
  return {
    top: ABOVE,
    plate: ABOVE + height,
    left,
    right,
    leans,
    pillar: tool === 'left' ? faces.left - gap : faces.right + gap,
    rule: tool === 'left' ? faces.right + 14 : faces.left - 14,
    blockHeight: drawable(block.height),
  };
}

/** The y of a height above the base; one that is beyond the block is put at its end. */
export function yOf(layout: BlockLayout, height: number): number {
  const share = clamp(height / layout.blockHeight, 0, 1);
  return layout.plate - share * (layout.plate - layout.top);
}

/** The point of a face at `y`. */
export function onFace(layout: BlockLayout, side: Side, y: number): Point {
  const share = (layout.plate - y) / (layout.plate - layout.top);
  return side === 'left'
    ? { x: layout.left - layout.leans.left * share, y }
    : { x: layout.right + layout.leans.right * share, y };
}

/** The block's outline. */
export function corners({ left, right, top, plate, leans }: BlockLayout): readonly Point[] {
  return [
    { x: left, y: plate },
    { x: right, y: plate },
    { x: right + leans.right, y: top },
    { x: left - leans.left, y: top },
  ];
}
