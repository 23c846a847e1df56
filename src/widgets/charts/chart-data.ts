/** How a point is drawn: by shape and colour, so that neither has to be seen alone. */
export type PointKind = 'plain' | 'in' | 'out' | 'too close to call' | 'left out';

/** One value with its doubt. All values of a chart are in one unit, that of its axis. */
export interface ChartPoint {
  /** What stands under it, such as a day. */
  readonly name: string;
  readonly value: number;
  /** The ends of its bar. */
  readonly low: number;
  readonly high: number;
  readonly kind: PointKind;
  /** All of it in words. */
  readonly text: string;
}

/** A level across the chart, from one point to another; both are places in the list of points. */
export interface ChartLevel {
  readonly value: number;
  readonly from: number;
  readonly to: number;
  readonly kind: 'limit' | 'centre';
}

/** Something that was done before a point, marked by a number of its own. */
export interface ChartMark {
  /** Place of the point that follows it. */
  readonly before: number;
  readonly text: string;
}

/** What a chart shows, in the order of time. */
export interface ChartData {
  readonly points: readonly ChartPoint[];
  readonly levels: readonly ChartLevel[];
  readonly marks: readonly ChartMark[];
  /** Name of the values' unit, at the axis. */
  readonly unit: string;
}

/** The part of the height that stays free above and below what is drawn. */
const MARGIN = 0.08;

/** Least and greatest value of the axis: bars and levels are inside, with some room. */
export function axisRange({ points, levels }: ChartData): readonly [number, number] {
  const values = [
    ...points.flatMap(({ low, high }) => [low, high]),
    ...levels.map(({ value }) => value),
  ].filter(Number.isFinite);
  if (values.length === 0) return [0, 1];
  const [least, greatest] = [Math.min(...values), Math.max(...values)];
  // All alike: room enough to see that they are.
  const room = (greatest - least) * MARGIN || Math.abs(least) * MARGIN || 1;
  return [least - room, greatest + room];
}

/** A number of the axis, without idle zeros and with a true minus sign. */
export function axisNumber(value: number): string {
  return String(Number(value.toFixed(6))).replace('-', '−');
}

/** Where marks stand along the chart: those before the same point share the room before it. */
export function markPlaces(marks: readonly ChartMark[]): readonly number[] {
  return marks.map(({ before }, index) => {
    const same = marks.filter((mark) => mark.before === before);
    const order = marks.slice(0, index).filter((mark) => mark.before === before).length;
    return before - 1 + (order + 1) / (same.length + 1);
  });
}

/** So many of the points of a chart, up to and without the one at `end`, with the levels and marks among them. */
export function partOfChart(data: ChartData, count: number, end: number): ChartData {
  const first = Math.max(0, end - count);
  const points = data.points.slice(first, end);
  const last = points.length - 1;
  const levels = data.levels
    .filter(({ from, to }) => to >= first && from < end)
    .map((level) => ({
      ...level,
      from: Math.max(0, level.from - first),
      to: Math.min(last, level.to - first),
    }));
  const marks = data.marks
    .filter(({ before }) => before >= first && before < end)
    .map((mark) => ({ ...mark, before: mark.before - first }));
  return { ...data, points, levels, marks };
}
