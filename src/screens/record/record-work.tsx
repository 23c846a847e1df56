import { wedgeOf } from '../../core/correction/removal';
import { expanded } from '../../core/statistics/coverage';
import type { PartEntry } from '../../entry/part-entry';
import { readPart } from '../../entry/read-part';
import type { Link } from '../../state/chain';
import { removalAdvised, workOutcome } from '../../state/outcomes';
import { shop } from '../../state/shop';
import type { InspectionRecord, WorkRecord } from '../../store/records';
import { deviation as shown, withDoubt } from '../../words/numbers';
import { moment } from '../../words/time';
import { METHOD_NAMES } from '../work/method-names';

interface RecordWorkProps {
  readonly inspection: InspectionRecord;
  readonly links: readonly Link[];
  readonly entry: PartEntry;
}

/** The corrections that were made before these readings, in time. */
export function RecordWork({ inspection, links, entry }: RecordWorkProps) {
  const before = links.slice(
    0,
    links.findIndex(({ id }) => id === inspection.id),
  );
  const works = before.filter((link): link is WorkRecord => link.kind === 'work');
  return (
    <section>
      <h3>Corrections made before these readings</h3>
      {works.length === 0 ? (
        <p>None on record.</p>
      ) : (
        <table>
          <thead>
            <tr>
              <th scope="col">When</th>
              <th scope="col">What</th>
              <th scope="col">Wedge advised</th>
              <th scope="col">Wedge that came off</th>
            </tr>
          </thead>
          <tbody>
            {works.map((work) => (
              <Work key={work.id} work={work} links={links} entry={entry} />
            ))}
          </tbody>
        </table>
      )}
    </section>
  );
}

interface WorkProps extends Omit<RecordWorkProps, 'inspection'> {
  readonly work: WorkRecord;
}

function Work({ work, links, entry }: WorkProps) {
  const { block } = readPart(entry).part ?? {};
  const { deviation } = shop.value.units;
  const outcome = workOutcome(work, links, entry)?.outcome;
  const amount = work.amount.text.trim();
  const how = [work.abrasive.trim(), amount && `${amount} ${work.amount.unit}`, work.note.trim()];
  return (
    <tr>
      <td>{moment(work.made)}</td>
      <th scope="row">
        {METHOD_NAMES[work.method]} the {work.face}
        <small>{how.filter(Boolean).join(', ')}</small>
      </th>
      <td>{block === undefined ? '–' : shown(wedgeOf(block, removalAdvised(work)), deviation)}</td>
      <td>
        {outcome === undefined
          ? 'not told'
          : withDoubt(outcome.wedge, expanded(outcome), deviation)}
      </td>
    </tr>
  );
}
