import { useEffect, useRef, useState } from 'preact/hooks';
import { Fold } from '../fold';
import type { ChartData } from './chart-data';
import type { DrawnChart } from './draw-chart';
import './charts.css';

interface HistoryChartProps {
  readonly data: ChartData;
  /** What the chart shows, in a sentence. */
  readonly label: string;
}

/**
 * Values with their doubt in the order of time, on a canvas; what is pointed at is told in words
 * under it, and all of it stands in a list for those who do not see it.
 */
export function HistoryChart({ data, label }: HistoryChartProps) {
  const root = useRef<HTMLDivElement>(null);
  const chart = useRef<DrawnChart | undefined>(undefined);
  const latest = useRef(data);
  latest.current = data;
  const [pointed, point] = useState<number>();
  const [isMissing, miss] = useState(false);
  useEffect(() => {
    let isGone = false;
    // Charts are heavy: their script comes when the first of them is to be seen.
    import('./draw-chart').then(
      ({ drawChart }) => {
        if (isGone || root.current === null) return;
        chart.current = drawChart(root.current, latest.current, point);
      },
      () => miss(true),
    );
    return () => {
      isGone = true;
      chart.current?.destroy();
      chart.current = undefined;
    };
  }, []);
  useEffect(() => chart.current?.show(data), [data]);
  const shown = data.points[pointed ?? data.points.length - 1];
  return (
    <figure class="chart">
      <div class="chart-canvas" ref={root} role="img" aria-label={label} />
      <figcaption class="small">
        {isMissing && <p>The chart did not load; the list below has all of it.</p>}
        <p aria-hidden="true">{shown?.text}</p>
        <ol class="chart-marks">
          {data.marks.map(({ text, before }, index) => (
            <li key={`${before} ${index}`}>
              <b>{index + 1}</b> {text}
            </li>
          ))}
        </ol>
      </figcaption>
      <Fold summary="As a list">
        <ol class="effects small">
          {data.points.map(({ text }, place) => (
            <li key={`${place} ${text}`}>{text}</li>
          ))}
        </ol>
      </Fold>
    </figure>
  );
}
