import { useEffect, useLayoutEffect, useMemo, useRef, useState } from 'preact/hooks';
import { Fold } from '../fold';
import { type ChartData, partOfChart } from './chart-data';
import type { DrawnChart } from './draw-chart';
import './charts.css';

interface HistoryChartProps {
  readonly data: ChartData;
  /** What the chart shows, in a sentence. */
  readonly label: string;
}

/** Points that a phone has room for. */
const MOST = 40;

/**
 * Values with their doubt in the order of time, on a canvas; what is pointed at is told in words
 * under it, and all of it stands in a list for those who do not see it.
 */
export function HistoryChart({ data: all, label }: HistoryChartProps) {
  const count = all.points.length;
  const [left, leave] = useState(0);
  const end = Math.max(Math.min(count, MOST), count - left);
  const data = useMemo(() => partOfChart(all, MOST, end), [all, end]);
  const root = useRef<HTMLDivElement>(null);
  const chart = useRef<DrawnChart | undefined>(undefined);
  const latest = useRef(data);
  latest.current = data;
  const [pointed, point] = useState<number>();
  const [isMissing, miss] = useState(false);
  // It goes with the screen, not after it: one that is taken off the page would be drawn once more, for no room at all.
  useLayoutEffect(() => {
    let turn: ReturnType<typeof setTimeout>;
    let isGone = false;
    // Charts are heavy: their script comes when the first of them is to be seen, and each has a turn of its own.
    import('./draw-chart').then(
      ({ drawChart }) => {
        turn = setTimeout(() => {
          if (isGone || root.current === null) return;
          chart.current = drawChart(root.current, latest.current, point);
        });
      },
      () => miss(true),
    );
    return () => {
      isGone = true;
      clearTimeout(turn);
      chart.current?.destroy();
      chart.current = undefined;
    };
  }, []);
  useEffect(() => chart.current?.show(data), [data]);
  const shown = data.points[pointed ?? -1] ?? data.points.at(-1);
  return (
    <figure class="chart">
      <div class="chart-canvas" ref={root} role="img" aria-label={label} />
      <figcaption class="small">
        {isMissing && <p>The chart did not load; the list below has all of it.</p>}
        <p aria-hidden="true">{shown?.text}</p>
      </figcaption>
      {count > MOST && (
        <div class="row">
          <button
            type="button"
            class="button"
            disabled={end <= MOST}
            onClick={() => leave(count - end + MOST)}
          >
            Earlier
          </button>
          <button
            type="button"
            class="button"
            disabled={end === count}
            onClick={() => leave(Math.max(0, count - end - MOST))}
          >
            Later
          </button>
        </div>
      )}
      {data.marks.length > 0 && (
        <Fold summary="Work between">
          <ol class="chart-marks small">
            {data.marks.map(({ text, before }, index) => (
              <li key={`${before} ${index}`}>
                <b>{index + 1}</b> {text}
              </li>
            ))}
          </ol>
        </Fold>
      )}
      <Fold summary="As a list">
        <ol class="effects small">
          {all.points.map(({ text }, place) => (
            <li key={`${place} ${text}`}>{text}</li>
          ))}
        </ol>
      </Fold>
    </figure>
  );
}
