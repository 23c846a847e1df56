import { useMemo } from 'preact/hooks';
import { expanded } from '../../core/statistics/coverage';
import { fromMicrometres, type LengthUnit } from '../../core/units/length';
import type { Link } from '../../state/chain';
import { historiesOf, type RequirementHistory } from '../../state/part-history';
import { shop } from '../../state/shop';
import type { PartRecord, WorkRecord } from '../../store/records';
import type { ChartData } from '../../widgets/charts/chart-data';
import { HistoryChart } from '../../widgets/charts/history-chart';
import { requirementName } from '../../words/faces';
import { deviation as shown, withDoubt } from '../../words/numbers';
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
    [finding.zone.width, finding.verdict, inspection.changed].join(),
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
    points: points.map(({ inspection, finding: { zone, requirement, verdict } }, place) => ({
      name: names[place] ?? '',
      value: fromMicrometres(zone.width, unit),
      expanded: fromMicrometres(expanded(zone), unit),
      kind: verdict,
      text: `${moment(inspection.made)}: ${withDoubt(zone.width, expanded(zone), unit)}, limit ${shown(requirement.tolerance, unit)}: ${VERDICT_LABELS[verdict].toLowerCase()}`,
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
