import type { ComponentChildren } from 'preact';
import type { Estimate } from '../../core/adjustment/adjustment';
import { COVERAGE, expanded } from '../../core/statistics/coverage';
import { coverageFactor } from '../../core/statistics/effective-degrees';
import { parts, shop } from '../../state/shop';
import type { InspectionRecord } from '../../store/records';
import { Fold } from '../../widgets/fold';
import { CAUSE_NAMES } from '../../words/causes';
import { degreesInWords, deviationNumber, rounded } from '../../words/numbers';
import { workingNames } from '../../words/working-names';
import { WeighedReadings } from './weighed-readings';

interface WorkingProps {
  /** The number with its terms and its budget, in µm. */
  readonly result: Pick<
    Estimate,
    'value' | 'terms' | 'contributions' | 'standard' | 'degreesOfFreedom'
  >;
  /** What the number is, to begin a sentence. */
  readonly what: string;
  readonly inspection: InspectionRecord;
  readonly children?: ComponentChildren;
}

/** How a number came about, to be followed with a pencil, and where its doubt comes from. */
export function Working(props: WorkingProps) {
  return (
    <Fold summary="Show the working">
      <WorkingInFull {...props} />
    </Fold>
  );
}

function WorkingInFull({ result, what, inspection, children }: WorkingProps) {
  const entry = inspection.closed?.part ?? parts.value.get(inspection.part)?.entry;
  const names = entry && workingNames(inspection.setups, entry.size);
  return (
    <div class="stack">
      <WeighedReadings
        caption={`${what} is each reading times its weight, added up`}
        weights="weight"
        rows={result.terms.map(({ reading, value, weight }) => ({
          name: names?.get(reading) ?? 'Reading',
          value,
          weight,
        }))}
        total={result.value}
      />
      <Budget result={result} />
      {children}
    </div>
  );
}

/** The uncertainty budget (GUM 7.2.7). */
function Budget({ result }: Pick<WorkingProps, 'result'>) {
  const { deviation } = shop.value.units;
  const bare = (value: number) => deviationNumber(value, deviation);
  const factor = coverageFactor(COVERAGE, result.degreesOfFreedom);
  return (
    <table>
      <caption>Where the ± comes from</caption>
      <thead>
        <tr>
          <th scope="col">Cause</th>
          <th scope="col">{deviation}</th>
          <th scope="col">ν</th>
        </tr>
      </thead>
      <tbody>
        {result.contributions
          .filter(({ standard }) => standard > 0)
          .map(({ cause, standard, degreesOfFreedom }) => (
            <tr key={cause}>
              <th scope="row">{CAUSE_NAMES[cause]}</th>
              <td>{bare(standard)}</td>
              <td>{degreesInWords(degreesOfFreedom)}</td>
            </tr>
          ))}
      </tbody>
      <tfoot>
        <tr>
          <th scope="row">Together, as squares</th>
          <td>{bare(result.standard)}</td>
          <td>{degreesInWords(result.degreesOfFreedom)}</td>
        </tr>
        <tr>
          <th scope="row">× {rounded(factor, 2)}, for about 95&nbsp;%</th>
          <td>{bare(expanded(result))}</td>
          <td />
        </tr>
      </tfoot>
    </table>
  );
}
