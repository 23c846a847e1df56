import type UPlot from 'uplot';
import {
  type ChartLevel,
  type ChartMark,
  type ChartPoint,
  markPlaces,
  type PointKind,
} from './chart-data';

/** Colours to draw with. */
export type Pens = Readonly<
  Record<'ink' | 'soft' | 'line' | 'paper' | 'in' | 'out' | 'close' | 'high', string>
>;

/* Everything below is in px of the canvas: `unit` of them are one of the screen. */

const unitOf = () => devicePixelRatio;

/** Levels across the chart: a limit is a bold line, a centre a dashed one. */
export function drawLevels(chart: UPlot, levels: readonly ChartLevel[], pens: Pens): void {
  const { ctx } = chart;
  ctx.save();
  for (const { value, from, to, kind } of levels) {
    ctx.strokeStyle = kind === 'limit' ? pens.out : pens.soft;
    ctx.lineWidth = (kind === 'limit' ? 2 : 1.5) * unitOf();
    ctx.setLineDash(kind === 'limit' ? [] : [6 * unitOf(), 4 * unitOf()]);
    const y = chart.valToPos(value, 'y', true);
    line(ctx, chart.valToPos(from - 0.5, 'x', true), y, chart.valToPos(to + 0.5, 'x', true), y);
  }
  ctx.restore();
}

/** Each mark is a dotted line from top to bottom with its number at its head. */
export function drawMarks(chart: UPlot, marks: readonly ChartMark[], pens: Pens): void {
  const { ctx, bbox } = chart;
  const unit = unitOf();
  const size = 9 * unit;
  ctx.save();
  ctx.font = `bold ${12 * unit}px system-ui, sans-serif`;
  ctx.textAlign = 'center';
  ctx.textBaseline = 'middle';
  markPlaces(marks).forEach((place, index) => {
    const x = chart.valToPos(place, 'x', true);
    ctx.strokeStyle = pens.high;
    ctx.lineWidth = 1.5 * unit;
    ctx.setLineDash([2 * unit, 4 * unit]);
    line(ctx, x, bbox.top, x, bbox.top + bbox.height);
    ctx.setLineDash([]);
    ctx.fillStyle = pens.paper;
    ctx.fillRect(x - size, bbox.top, 2 * size, 2 * size);
    ctx.strokeRect(x - size, bbox.top, 2 * size, 2 * size);
    ctx.fillStyle = pens.high;
    ctx.fillText(String(index + 1), x, bbox.top + size);
  });
  ctx.restore();
}

/** How far a point reaches to any side, where there is room, in px of the screen. */
const POINT_SIZE = 6;

/** A thin line from point to point, the bar of each, and the points over them. */
export function drawPoints(chart: UPlot, points: readonly ChartPoint[], pens: Pens): void {
  const { ctx } = chart;
  const unit = unitOf();
  const apart = chart.bbox.width / Math.max(1, points.length);
  const size = Math.min(POINT_SIZE * unit, apart / 3);
  const at = points.map(({ value }, place) => ({
    x: chart.valToPos(place, 'x', true),
    y: chart.valToPos(value, 'y', true),
  }));
  ctx.save();
  ctx.strokeStyle = pens.soft;
  ctx.lineWidth = unit;
  ctx.beginPath();
  for (const { x, y } of at) ctx.lineTo(x, y);
  ctx.stroke();
  points.forEach(({ low, high, kind }, place) => {
    const { x, y } = at[place] ?? { x: 0, y: 0 };
    const colour = colourOf(kind, pens);
    ctx.strokeStyle = colour;
    ctx.fillStyle = colour;
    ctx.lineWidth = Math.min(2 * unit, size / 2);
    const ends = [low, high].map((end) => chart.valToPos(end, 'y', true));
    const [bottom = y, top = y] = ends;
    line(ctx, x, bottom, x, top);
    for (const end of ends) line(ctx, x - (2 / 3) * size, end, x + (2 / 3) * size, end);
    drawShape(ctx, kind, x, y, size, pens.paper);
  });
  ctx.restore();
}

function colourOf(kind: PointKind, pens: Pens): string {
  if (kind === 'plain') return pens.ink;
  if (kind === 'left out') return pens.soft;
  return kind === 'too close to call' ? pens.close : pens[kind];
}

/** A disc, a square on its corner, a cross, or an empty ring for what does not count. */
function drawShape(
  ctx: CanvasRenderingContext2D,
  kind: PointKind,
  x: number,
  y: number,
  size: number,
  paper: string,
): void {
  ctx.beginPath();
  if (kind === 'out') {
    ctx.lineWidth = size / 2;
    line(ctx, x - size, y - size, x + size, y + size);
    line(ctx, x - size, y + size, x + size, y - size);
    return;
  }
  if (kind === 'too close to call') {
    for (const [right, down] of [
      [1.3, 0],
      [0, 1.3],
      [-1.3, 0],
      [0, -1.3],
    ] as const) {
      ctx.lineTo(x + right * size, y + down * size);
    }
    ctx.closePath();
  } else {
    ctx.arc(x, y, size, 0, 2 * Math.PI);
  }
  if (kind === 'left out') ctx.fillStyle = paper;
  ctx.fill();
  ctx.stroke();
}

function line(ctx: CanvasRenderingContext2D, x1: number, y1: number, x2: number, y2: number): void {
  ctx.beginPath();
  ctx.moveTo(x1, y1);
  ctx.lineTo(x2, y2);
  ctx.stroke();
}
