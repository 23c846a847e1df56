import { useMemo } from 'preact/hooks';
import { fromMicrometres, type LengthUnit } from '../core/units/length';
import { setAnew, takeBackSetAnew } from '../state/begun-anew';
import {
  type ComparatorHistory,
  type ComparatorRun,
  comparatorHistories,
  currentRun,
} from '../state/comparators';
import { isGathered } from '../state/found';
import { shop } from '../state/shop';
import type { ChartData } from '../widgets/charts/chart-data';
import { HistoryChart } from '../widgets/charts/history-chart';
import { Page } from '../widgets/page';
import { limitsInWords, movedInWords } from '../words/comparators';
import { LEAN_OVER } from '../words/leans';
import { withDoubt } from '../words/numbers';
import { day, moment } from '../words/time';
import { useCameFrom } from './came-from';
import { Gathering, useGatheredFinds } from './gathered-finds';
import { to } from './paths';
import { useUnitsButton } from './units-button';

/** What turning blocks round has said of each comparator so far, and whether it has moved. */
export function ComparatorsScreen() {
  const units = useUnitsButton({});
  const from = useCameFrom();
  useGatheredFinds();
  const histories = comparatorHistories.value;
  return (
    <Page
      title="The comparators"
      back={{ to: to.kit(from), name: 'kit and units' }}
      side={units.button}
      opened={units.panel}
    >
      {isGathered.value && histories.length === 0 && (
        <p class="note">
          Nothing yet. Each finished inspection that turns a block round under a comparator tells
          its zero, and under a column its lean: here they stand in the order of time.
        </p>
      )}
      {histories.map((history) => (
        <ComparatorSheet key={history.name} history={history} />
      ))}
      {!isGathered.value && <Gathering />}
    </Page>
  );
}

function ComparatorSheet({ history }: { readonly history: ComparatorHistory }) {
  const { name, title, kind } = history;
  const { deviation, size } = shop.value.units;
  const over = LEAN_OVER[size];
  const run = currentRun(history, over.length);
  const data = useMemo(
    () => chartOf(run, deviation),
    [run.points.length, run.points.at(-1)?.at, run.setAnew, deviation, over],
  );
  return (
    <section class="sheet" aria-label={title}>
      <h2>{title}</h2>
      <p class="soft small">
        {kind === 'zero'
          ? 'What it would show on a truly square block, at each check.'
          : `How the column leans ${over.name}, at each check.`}
      </p>
      <Health run={run} />
      {run.points.length > 0 && (
        <HistoryChart
          data={data}
          label={`${title}: ${run.points.length} checks. Last: ${data.points.at(-1)?.text}`}
        />
      )}
      {run.chart !== undefined && <p class="soft small">{limitsInWords(run.points.length)}</p>}
      <div class="row">
        {run.points.length > 0 && (
          <button type="button" class="button" onClick={() => setAnew(name, run.points.at(-1)?.at)}>
            It was set anew
          </button>
        )}
        {run.setAnew !== undefined && (
          <button type="button" class="button button-quiet" onClick={() => takeBackSetAnew(name)}>
            Set anew {moment(run.setAnew)}: take that back
          </button>
        )}
      </div>
    </section>
  );
}

/** Whether it has moved, why, and when it was last found good. */
function Health({ run: { points, chart, signals, lastGood } }: { readonly run: ComparatorRun }) {
  if (chart === undefined) return <p>It takes two checks to tell whether it moves.</p>;
  const last = points.length - 1;
  const reasons = movedInWords(
    signals.filter(({ places }) => places.at(-1) === last).map(({ rule }) => rule),
  );
  return (
    <div class={reasons.length > 0 ? 'note note-wrong' : 'note note-good'}>
      {reasons.length > 0 && (
        <p>
          <b>It has moved.</b> {reasons.join(' ')} Check it and set it anew.
        </p>
      )}
      <p>
        {lastGood === undefined
          ? 'Never yet found good.'
          : `Last found good ${moment(lastGood.at)}.`}
      </p>
    </div>
  );
}

function chartOf({ points, chart, signals }: ComparatorRun, unit: LengthUnit): ChartData {
  const moved = new Set(signals.map(({ places }) => places.at(-1)));
  const to = points.length - 1;
  const level = (value: number, kind: 'limit' | 'centre') => {
    return { value: fromMicrometres(value, unit), from: 0, to, kind };
  };
  return {
    unit,
    points: points.map(({ at, value, expanded, part }, place) => ({
      name: day(at),
      value: fromMicrometres(value, unit),
      low: fromMicrometres(value - expanded, unit),
      high: fromMicrometres(value + expanded, unit),
      kind: moved.has(place) ? 'out' : 'plain',
      text: `${moment(at)}, ${part.entry.name.trim() || 'part without a name'}: ${withDoubt(value, expanded, unit)}${moved.has(place) ? ', moved' : ''}`,
    })),
    levels:
      chart === undefined
        ? []
        : [level(chart.centre, 'centre'), level(chart.lower, 'limit'), level(chart.upper, 'limit')],
    marks: [],
  };
}
