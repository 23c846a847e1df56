import UPlot from 'uplot';
import 'uplot/dist/uPlot.min.css';
import { axisNumber, axisRange, type ChartData } from './chart-data';
import { drawLevels, drawMarks, drawPoints, type Pens } from './chart-marks';

/** A chart that is on the screen. */
export interface DrawnChart {
  readonly show: (data: ChartData) => void;
  readonly destroy: () => void;
}

const HEIGHT = 240;
/** px: less leaves nothing between the axes, and points would be drawn with a size below nothing. */
const LEAST_WIDTH = 160;
/** px between two names under the chart. */
const NAME_SPACE = 64;
/** Every how many points a name may stand. */
const STEPS = [1, 2, 5, 10, 20, 50, 100, 200, 500, 1000, 2000, 5000, 10_000];

/**
 * Puts a chart into `root`, draws it in the next turn, as both together take long, and keeps it as wide as
 * `root`. `onPoint` is told which point is pointed at, with a mouse or a finger.
 */
export function drawChart(
  root: HTMLElement,
  first: ChartData,
  onPoint: (place: number) => void,
): DrawnChart {
  let data = first;
  let pens = pensOf(root);
  const axisPens = axisPensOf(() => pens);
  let stop: readonly (() => void)[] = [];
  const chart = new UPlot(
    {
      width: widthOf(root),
      height: HEIGHT,
      legend: { show: false },
      cursor: { y: false, drag: { x: false, y: false }, points: { show: false } },
      scales: {
        x: { time: false, range: () => [-0.5, data.points.length - 0.5] },
        y: { range: () => [...axisRange(data)] },
      },
      // The points are drawn below, with their bars.
      series: [{}, { points: { show: false }, paths: () => null }],
      axes: [
        {
          ...axisPens,
          space: NAME_SPACE,
          incrs: STEPS,
          values: (_, splits) => splits.map((place) => data.points[place]?.name ?? ''),
        },
        {
          ...axisPens,
          size: 56,
          label: data.unit,
          labelSize: 20,
          values: (_, splits) => splits.map(axisNumber),
        },
      ],
      hooks: {
        draw: [
          (drawn) => {
            drawLevels(drawn, data.levels, pens);
            drawMarks(drawn, data.marks, pens);
            drawPoints(drawn, data.points, pens);
          },
        ],
        setCursor: [({ cursor: { idx } }) => typeof idx === 'number' && onPoint(idx)],
      },
    },
    columnsOf(data),
    (made, draw) => {
      root.append(made.root);
      const turn = setTimeout(() => {
        draw();
        stop = [followWidth(root, made), followTheme(redraw), followFinger(made)];
      });
      stop = [() => clearTimeout(turn)];
    },
  );
  const redraw = () => {
    pens = pensOf(root);
    chart.redraw(false, true);
  };
  return {
    show: (next) => {
      data = next;
      chart.setData(columnsOf(data));
    },
    destroy: () => {
      for (const each of stop) each();
      chart.destroy();
    },
  };
}

function columnsOf({ points }: ChartData): UPlot.AlignedData {
  return [points.map((_, place) => place), points.map(({ value }) => value)];
}

/** Only the width is followed: a height that followed the box could grow without end. */
function followWidth(root: HTMLElement, chart: UPlot): () => void {
  const observer = new ResizeObserver(() => {
    const width = widthOf(root);
    if (width !== chart.width) chart.setSize({ width, height: HEIGHT });
  });
  observer.observe(root);
  return () => observer.disconnect();
}

/** As wide as there is room; a chart may be drawn before it is laid out. */
function widthOf(root: HTMLElement): number {
  return Math.max(LEAST_WIDTH, root.clientWidth);
}

/** The colours are those of the page at the time of drawing. */
function followTheme(redraw: () => void): () => void {
  const dark = matchMedia('(prefers-color-scheme: dark)');
  dark.addEventListener('change', redraw);
  const observer = new MutationObserver(redraw);
  observer.observe(document.documentElement, { attributes: true });
  return () => {
    dark.removeEventListener('change', redraw);
    observer.disconnect();
  };
}

/** A finger points as a mouse does; up and down it still scrolls the page. */
function followFinger(chart: UPlot): () => void {
  const point = (event: PointerEvent) => {
    if (event.pointerType === 'mouse') return;
    const { left, top } = chart.over.getBoundingClientRect();
    chart.setCursor({ left: event.clientX - left, top: event.clientY - top });
  };
  chart.over.addEventListener('pointerdown', point);
  chart.over.addEventListener('pointermove', point);
  return () => {
    chart.over.removeEventListener('pointerdown', point);
    chart.over.removeEventListener('pointermove', point);
  };
}

function axisPensOf(pens: () => Pens) {
  return {
    font: '13px system-ui, sans-serif',
    labelFont: '13px system-ui, sans-serif',
    stroke: () => pens().soft,
    grid: { stroke: () => pens().line, width: 1 },
    ticks: { stroke: () => pens().line, width: 1 },
  };
}

function pensOf(root: HTMLElement): Pens {
  const style = getComputedStyle(root);
  const colour = (name: string) => style.getPropertyValue(name).trim();
  return {
    ink: colour('--ink'),
    soft: colour('--ink-soft'),
    line: colour('--line'),
    paper: colour('--sheet'),
    in: colour('--in'),
    out: colour('--out'),
    close: colour('--close'),
    high: colour('--high'),
  };
}
