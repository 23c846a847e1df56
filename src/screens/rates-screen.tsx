import { useMemo, useState } from 'preact/hooks';
import { expanded } from '../core/statistics/coverage';
import { fromMicrometres } from '../core/units/length';
import { type WayOfWorking, wayName } from '../entry/way-of-working';
import { learnAnew, takeBackLearningAnew } from '../state/begun-anew';
import { isGathered } from '../state/found';
import {
  countAgain,
  driftOfWay,
  type LearnedPass,
  learnedRate,
  learnedWays,
  leaveOut,
  passesOf,
} from '../state/learning';
import { shop } from '../state/shop';
import type { ChartData } from '../widgets/charts/chart-data';
import { HistoryChart } from '../widgets/charts/history-chart';
import { Page } from '../widgets/page';
import { withDoubt } from '../words/numbers';
import { day, moment } from '../words/time';
import {
  driftInWords,
  passRate,
  rateBasisInWords,
  rateUnit,
  scatterInWords,
  spokenRate,
  typicalInWords,
} from '../words/work';
import { useCameFrom } from './came-from';
import { Gathering, useGatheredFinds } from './gathered-finds';
import { to } from './paths';
import { useUnitsButton } from './units-button';
import { METHOD_NAMES } from './work/method-names';

/** How fast each way of working has cut so far: to be looked at, put right, and begun anew. */
export function RatesScreen() {
  const units = useUnitsButton({});
  const from = useCameFrom();
  useGatheredFinds();
  const ways = learnedWays.value;
  return (
    <Page
      title="How fast it cuts"
      back={{ to: to.kit(from), name: 'kit and units' }}
      side={units.button}
      opened={units.panel}
    >
      {isGathered.value && ways.length === 0 && (
        <p class="note">
          Nothing yet. Log how long you worked a face, and measure before and after: each such pass
          tells how fast that abrasive cuts that material.
        </p>
      )}
      {ways.map((way) => (
        <WaySheet key={wayName(way)} way={way} />
      ))}
      {!isGathered.value && <Gathering />}
    </Page>
  );
}

function WaySheet({ way }: { readonly way: WayOfWorking }) {
  const name = wayName(way);
  const { deviation } = shop.value.units;
  const rate = learnedRate(way);
  const own = passesOf(way);
  const anew = shop.value.learnedSince?.[name];
  const title = [
    way.material.trim() || 'Material not named',
    way.abrasive.trim() || 'no abrasive named',
  ].join(', ');
  return (
    <section class="sheet" aria-label={title}>
      <h2>{title}</h2>
      <p class="big-number">{typicalInWords(rate, way.unit, deviation)}</p>
      <p class="soft small">{rateBasisInWords(rate)}</p>
      {own.length > 0 && <p class="soft small">{scatterInWords(rate)}</p>}
      {own.length > 0 && <p>{driftInWords(driftOfWay(way))}</p>}
      {own.length > 1 && <PassesChart title={title} own={own} typical={rate.typical.median} />}
      <PassLines own={own} />
      {anew === undefined ? (
        <button type="button" class="button" onClick={() => learnAnew(name, own.at(-1)?.work.made)}>
          Begin anew: forget these
        </button>
      ) : (
        <p class="note">
          Begun anew {moment(anew)}.{' '}
          <button type="button" class="button" onClick={() => takeBackLearningAnew(name)}>
            Count the earlier ones again
          </button>
        </p>
      )}
    </section>
  );
}

interface PassesChartProps {
  readonly title: string;
  readonly own: readonly LearnedPass[];
  /** µm of wedge per second or stroke. */
  readonly typical: number;
}

/** The rate of each pass in the order of time, beside the typical one. */
function PassesChart({ title, own, typical }: PassesChartProps) {
  const { deviation: unit } = shop.value.units;
  const said = own.map(({ work, wedge, counts }) => `${work.id} ${wedge} ${counts}`).join();
  const data = useMemo((): ChartData => {
    const points = own.map((pass) => {
      const rate = passRate(pass);
      return {
        name: day(pass.work.made),
        value: fromMicrometres(rate.value, unit),
        low: fromMicrometres(rate.value - rate.expanded, unit),
        high: fromMicrometres(rate.value + rate.expanded, unit),
        kind: pass.counts ? ('plain' as const) : ('left out' as const),
        text: `${moment(pass.work.made)}: ${withDoubt(rate.value, rate.expanded, unit)}`,
      };
    });
    const value = fromMicrometres(spokenRate(typical), unit);
    return {
      unit: rateUnit(own[0]?.way.unit ?? 'seconds', unit),
      points,
      levels: [{ value, from: 0, to: points.length - 1, kind: 'centre' }],
      marks: [],
    };
  }, [said, typical, unit]);
  return <HistoryChart data={data} label={`${title}: the rate of ${own.length} passes in time`} />;
}

/** Passes that are shown before somebody asks for all. */
const LATEST = 6;

/** The passes, the latest first. */
function PassLines({ own }: { readonly own: readonly LearnedPass[] }) {
  const [isWhole, showWhole] = useState(false);
  const shown = isWhole ? own : own.slice(-LATEST);
  return (
    <>
      <ul class="passes small">
        {shown.toReversed().map((pass) => (
          <PassLine key={pass.work.id} pass={pass} />
        ))}
      </ul>
      {shown.length < own.length && (
        <button type="button" class="button" onClick={() => showWhole(true)}>
          Show its {own.length - shown.length} earlier passes
        </button>
      )}
    </>
  );
}

/** One pass, and whether it counts. */
function PassLine({ pass }: { readonly pass: LearnedPass }) {
  const { work, part, counts } = pass;
  const { deviation } = shop.value.units;
  return (
    <li class={counts ? 'pass' : 'pass soft'}>
      <span>
        {METHOD_NAMES[work.method]} <a href={to.work(part.id, work.id)}>{part.entry.name.trim()}</a>
        , {work.amount.text.trim()} {work.amount.unit}:{' '}
        {withDoubt(pass.wedge, expanded(pass), deviation)}. {moment(work.made)}
        {!counts && ' (does not count)'}
      </span>
      {work.notLearned === undefined ? (
        <button type="button" class="button button-quiet" onClick={() => void leaveOut(pass)}>
          Leave out
        </button>
      ) : (
        <button type="button" class="button button-quiet" onClick={() => void countAgain(pass)}>
          Count it again
        </button>
      )}
    </li>
  );
}
