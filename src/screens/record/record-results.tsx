import {
  type AnyFinding,
  type AnyFixedFinding,
  type AnyUnfixedFinding,
  allFindings,
  isPending,
} from '../../core/inspection/any-finding';
import { foundOf } from '../../core/inspection/found';
import { COVERAGE, expanded } from '../../core/statistics/coverage';
import { coverageFactor } from '../../core/statistics/effective-degrees';
import { linesOf, type PartEntry } from '../../entry/part-entry';
import type { Worked } from '../../state/answers';
import { shop } from '../../state/shop';
import type { FixedFinding } from '../../state/zone-form/questions';
import type { InspectionRecord } from '../../store/records';
import { ControlFrame } from '../../widgets/record/control-frame';
import { requirementName } from '../../words/faces';
import { mappedInWords, mapSoFarInWords } from '../../words/flatness';
import { formReadInWords, withFormInWords } from '../../words/form';
import { degreesInWords, foundInWords, withDoubt } from '../../words/numbers';
import { asTyped } from '../../words/read-as';
import { factorInWords, noResultInWords } from '../../words/record';
import { chanceInWords, standsInWords, VERDICT_LABELS } from '../../words/verdicts';

interface RecordResultsProps {
  readonly entry: PartEntry;
  readonly inspection: InspectionRecord;
  readonly worked: Worked;
}

/** Each requirement with what was found. */
export function RecordResults({ entry, worked }: RecordResultsProps) {
  const findings = allFindings(worked.answer);
  const isAsked = linesOf(entry).length > 0;
  return (
    <section>
      <h3>Requirements and results</h3>
      {findings.length === 0 ? (
        <p>{isAsked ? noResultInWords(worked.silence) : 'Nothing is asked of the part.'}</p>
      ) : (
        <>
          <p>
            <b>{standsInWords(findings)}.</b>
          </p>
          <table class="record-results">
            <thead>
              <tr>
                <th scope="col">Requirement</th>
                <th scope="col">Found, width of the zone</th>
                <th scope="col">k (ν)</th>
                <th scope="col">Chance of conformity</th>
                <th scope="col">Verdict</th>
              </tr>
            </thead>
            <tbody>
              {findings.map((finding) => (
                <Result key={finding.requirement.id} finding={finding} entry={entry} />
              ))}
            </tbody>
          </table>
        </>
      )}
    </section>
  );
}

function Result({ finding, entry }: { readonly finding: AnyFinding; readonly entry: PartEntry }) {
  const { requirement } = finding;
  const typed = linesOf(entry).find(({ id }) => id === requirement.id)?.tolerance;
  return (
    <tr>
      <th scope="row">
        <span>{requirementName(requirement)}</span>
        <ControlFrame
          face={requirement.face}
          datum={requirement.datum}
          tolerance={typed === undefined ? '' : asTyped(typed)}
          datumA={entry.datum}
        />
      </th>
      {finding.fixed ? <FixedCells finding={finding} /> : <NotFixedCells finding={finding} />}
    </tr>
  );
}

function FixedCells({ finding }: { readonly finding: AnyFixedFinding }) {
  const { verdict } = finding;
  const { deviation, size } = shop.value.units;
  const pending = isPending(finding);
  const found = foundOf(finding);
  return (
    <>
      <td>
        {foundInWords(found, deviation)}
        {'formPoints' in finding ? (
          <FormFound finding={finding} />
        ) : (
          <small>{mappedInWords(finding, size)}</small>
        )}
      </td>
      <td>{'expanded' in found.doubt ? factorOf(finding) : '–'}</td>
      <td>{pending ? '…' : chanceInWords(finding)}</td>
      <td>
        <b>{pending ? '…' : VERDICT_LABELS[verdict]}</b>
      </td>
    </>
  );
}

/** The factor of the ±, with its degrees of freedom. */
function factorOf({ zone: { degreesOfFreedom } }: AnyFixedFinding): string {
  const factor = factorInWords(coverageFactor(COVERAGE, degreesOfFreedom));
  return `${factor} (${degreesInWords(degreesOfFreedom)})`;
}

/** What form does to the zone of a plane, and whose word it leans on. */
function FormFound({ finding }: { readonly finding: FixedFinding }) {
  const { zone, withForm, formPoints, assumed } = finding;
  const { deviation } = shop.value.units;
  const count = formPoints.length;
  return (
    <>
      {count > 0 && withForm === undefined && (
        <small>{withFormInWords(count, withForm, deviation)}</small>
      )}
      {withForm !== undefined && (
        <small>
          {formReadInWords(count, withForm)} Its plane by itself:{' '}
          {withDoubt(zone.width, expanded(zone), deviation)}, k (ν) {factorOf(finding)}.
        </small>
      )}
      {assumed && <small>Leans on the faces being taken as parallel.</small>}
    </>
  );
}

function NotFixedCells({ finding }: { readonly finding: AnyUnfixedFinding }) {
  const { deviation } = shop.value.units;
  return (
    <>
      <td>
        not fixed by these readings
        {'lack' in finding && finding.lack.kind === 'places to read' && (
          <small>{mapSoFarInWords(finding.lack, deviation)}</small>
        )}
      </td>
      <td>–</td>
      <td>–</td>
      <td>
        <b>None</b>
      </td>
    </>
  );
}
