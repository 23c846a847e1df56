import type { Finding } from '../../core/inspection/findings';
import { COVERAGE, expanded } from '../../core/statistics/coverage';
import { coverageFactor } from '../../core/statistics/effective-degrees';
import { readingNames } from '../../entry/reading-names';
import { shop } from '../../state/shop';
import type { InspectionRecord } from '../../store/records';
import { CAUSE_NAMES } from '../../words/causes';
import {
  deviationNumber as bare,
  degreesInWords,
  rounded,
  deviation as shown,
} from '../../words/numbers';

interface WorkingProps {
  readonly finding: Extract<Finding, { fixed: true }>;
  readonly inspection: InspectionRecord;
}

/** How the number came about, to be followed with a pencil, and where its doubt comes from. */
export function Working({ finding, inspection }: WorkingProps) {
  return (
    <details>
      <summary>Show the working</summary>
      <div class="stack">
        <Terms finding={finding} inspection={inspection} />
        <Budget finding={finding} />
        {finding.withForm === undefined && <Chance finding={finding} />}
      </div>
    </details>
  );
}

/** Reading × weight, summed. */
function Terms({ finding, inspection }: WorkingProps) {
  const { deviation } = shop.value.units;
  const names = readingNames(inspection.setups);
  const { terms, width } = finding.zone;
  return (
    <table>
      <caption>The width is each reading times its weight, added up</caption>
      <thead>
        <tr>
          <th scope="col">Reading</th>
          <th scope="col">{deviation}</th>
          <th scope="col">× weight</th>
          <th scope="col">=</th>
        </tr>
      </thead>
      <tbody>
        {terms.map(({ reading, value, weight }, index) => (
          <tr key={`${reading} ${index}`}>
            <th scope="row">{names.get(reading) ?? 'Reading'}</th>
            <td>{bare(value, deviation)}</td>
            <td>{rounded(weight, 4)}</td>
            <td>{bare(value * weight, deviation)}</td>
          </tr>
        ))}
      </tbody>
      <tfoot>
        <tr>
          <th scope="row">Together</th>
          <td />
          <td />
          <td>{bare(width, deviation)}</td>
        </tr>
      </tfoot>
    </table>
  );
}

/** The uncertainty budget (GUM 7.2.7). */
function Budget({ finding }: Pick<WorkingProps, 'finding'>) {
  const { deviation } = shop.value.units;
  const { zone } = finding;
  const factor = coverageFactor(COVERAGE, zone.degreesOfFreedom);
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
        {zone.contributions
          .filter(({ standard }) => standard > 0)
          .map(({ cause, standard, degreesOfFreedom }) => (
            <tr key={cause}>
              <th scope="row">{CAUSE_NAMES[cause]}</th>
              <td>{bare(standard, deviation)}</td>
              <td>{degreesInWords(degreesOfFreedom)}</td>
            </tr>
          ))}
      </tbody>
      <tfoot>
        <tr>
          <th scope="row">Together, as squares</th>
          <td>{bare(zone.standard, deviation)}</td>
          <td>{degreesInWords(zone.degreesOfFreedom)}</td>
        </tr>
        <tr>
          <th scope="row">× {rounded(factor, 2)}, for about 95 %</th>
          <td>{bare(expanded(zone), deviation)}</td>
          <td />
        </tr>
      </tfoot>
    </table>
  );
}

/** How the verdict's chance comes about. */
function Chance({ finding }: Pick<WorkingProps, 'finding'>) {
  const { deviation } = shop.value.units;
  const { zone, requirement } = finding;
  const room = requirement.tolerance - zone.width;
  return (
    <p class="small">
      The tolerance {shown(requirement.tolerance, deviation)} less the width is{' '}
      {shown(room, deviation)}, which is {rounded(room / zone.standard, 2)} standard uncertainties:
      Student’s distribution with {degreesInWords(zone.degreesOfFreedom)} degrees of freedom gives
      the chance (JCGM 106).
    </p>
  );
}
