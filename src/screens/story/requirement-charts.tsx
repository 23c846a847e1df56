import { useMemo } from 'preact/hooks';
import { foundOf, rangeOf } from '../../core/inspection/found';
import { fromMicrometres, type LengthUnit } from '../../core/units/length';
import type { Link } from '../../state/chain';
import { historiesOf, type RequirementHistory } from '../../state/part-history';
import { shop } from '../../state/shop';
import type { PartRecord, WorkRecord } from '../../store/records';
import type { ChartData } from '../../widgets/charts/chart-data';
import { HistoryChart } from '../../widgets/charts/history-chart';
import { requirementName } from '../../words/faces';
import { foundInWords, deviation as shown } from '../../words/numbers';
import { besideEachOther, day, moment } from '../../words/time';
import { VERDICT_LABELS } from '../../words/verdicts';
import { METHOD_NAMES } from '../work/method-names';

interface RequirementChartsProps {
  readonly part: PartRecord;
  readonly links: readonly Link[];
}

/** Every requirement against its limit through the part's story, with the work between the readings. */
export function RequirementCharts({ part, links }: RequirementChartsProps) {
  const { deviation } = shop.value.units;
  const histories = historiesOf(links, part.entry).filter(({ points }) => points.length > 1);
  return (
    <div class="charts">
      {histories.map((history) => (
        <RequirementChart
          key={`${history.requirement.face} ${history.requirement.datum}`}
          history={history}
          unit={deviation}
        />
      ))}
    </div>
  );
}

interface RequirementChartProps {
  readonly history: RequirementHistory;
  readonly unit: LengthUnit;
}

function RequirementChart({ history, unit }: RequirementChartProps) {
  const name = requirementName(history.requirement);
  const said = history.points.map(({ finding, inspection }) =>
    [
      foundOf(finding).value,
      rangeOf(foundOf(finding)).high,
      finding.verdict,
      inspection.changed,
    ].join(),
  );
  // A chart is drawn anew only for other points.
  const data = useMemo(() => chartOf(history, unit), [said.join(), unit]);
  return (
    <section class="sheet" aria-label={`${name}, in time`}>
      <h3>{name}</h3>
      <HistoryChart
        data={data}
        label={`${name} through ${history.points.length} inspections, against its limit. Last: ${data.points.at(-1)?.text}`}
      />
    </section>
  );
}

function chartOf({ points }: RequirementHistory, unit: LengthUnit): ChartData {
  const names = besideEachOther(points.map(({ inspection }) => inspection.made));
  return {
    unit,
    points: points.map(({ inspection, finding }, place) => ({
      name: names[place] ?? '',
      value: fromMicrometres(foundOf(finding).value, unit),
      low: fromMicrometres(rangeOf(foundOf(finding)).low, unit),
      high: fromMicrometres(rangeOf(foundOf(finding)).high, unit),
      kind: finding.verdict,
      text: `${moment(inspection.made)}: ${foundInWords(foundOf(finding), unit)}, limit ${shown(finding.requirement.tolerance, unit)}: ${VERDICT_LABELS[finding.verdict].toLowerCase()}`,
    })),
    levels: points.map(({ finding: { requirement } }, place) => ({
      value: fromMicrometres(requirement.tolerance, unit),
      from: place,
      to: place,
      kind: 'limit' as const,
    })),
    marks: points.flatMap(({ worked }, before) =>
      worked.map((work) => ({ before, text: workInWords(work) })),
    ),
  };
}

function workInWords(work: WorkRecord): string {
  const amount = work.amount.text.trim();
  return [
    `${METHOD_NAMES[work.method]} the ${work.face}`,
    amount && `${amount} ${work.amount.unit}`,
    day(work.made),
  ]
    .filter(Boolean)
    .join(', ');
}
