import type { Found } from '../../core/inspection/found';
import type { SaidOtherwise } from '../../core/inspection/said';
import { linesOf, type PartEntry } from '../../entry/part-entry';
import { methodChange } from '../../state/said';
import { shop } from '../../state/shop';
import type { InspectionRecord } from '../../store/records';
import { requirementName } from '../../words/faces';
import { foundInWords } from '../../words/numbers';
import { chanceInWords, VERDICT_LABELS } from '../../words/verdicts';

interface MethodChangedProps {
  readonly inspection: InspectionRecord;
  readonly entry: PartEntry;
}

/** Where the method has changed since the readings were finished, and what it said then. Mostly nothing. */
export function MethodChanged({ inspection, entry }: MethodChangedProps) {
  const change = methodChange(inspection);
  if (change === undefined) return null;
  return (
    <section class="note note-warning">
      <h3>What was said then is another</h3>
      <p>
        Version {change.before} of the method worked these readings out when they were finished.
        This is version {change.now}, and says something else of the same readings:
      </p>
      <table>
        <thead>
          <tr>
            <th scope="col">Requirement</th>
            <th scope="col">Then</th>
            <th scope="col">Now</th>
          </tr>
        </thead>
        <tbody>
          {change.changes.map(({ requirement, before, now }) => {
            const asked = linesOf(entry).find(({ id }) => id === requirement);
            return (
              <tr key={requirement}>
                <th scope="row">
                  {asked === undefined ? 'A requirement' : requirementName(asked)}
                </th>
                <td>{inWords(before)}</td>
                <td>{inWords(now)}</td>
              </tr>
            );
          })}
        </tbody>
      </table>
    </section>
  );
}

type SaidFound = NonNullable<SaidOtherwise['before']>;

/** The figure that the verdict was about. */
function figureOf({ value, expanded, withForm }: SaidFound): Found {
  if (withForm === undefined) return { value, doubt: { expanded } };
  const { width, low, high } = withForm;
  return { value: width, doubt: { low, high } };
}

function inWords(found: SaidOtherwise['before']): string {
  if (found === undefined) return 'not fixed';
  const { verdict } = found;
  const width = foundInWords(figureOf(found), shop.value.units.deviation);
  return `${width}, ${VERDICT_LABELS[verdict].toLowerCase()}, chance of conformity ${chanceInWords(found)}`;
}
