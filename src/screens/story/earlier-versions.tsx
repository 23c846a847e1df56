import { versionsOf } from '../../state/versions';
import type { InspectionRecord, PartRecord } from '../../store/records';
import { moment } from '../../words/time';
import { to } from '../paths';

interface EarlierVersionsProps {
  readonly part: PartRecord;
  readonly inspection: InspectionRecord;
}

/** What an inspection was finished with before it was opened again: when, why, and what has changed. */
export function EarlierVersions({ part, inspection }: EarlierVersionsProps) {
  const earlier = versionsOf(inspection);
  if (earlier.length === 0) return null;
  return (
    <ul class="effects small" aria-label="Earlier versions">
      {earlier.map(({ id, made, why, record: { closed } }) => (
        <li key={id} class="sheet-head">
          <span>
            {closed === undefined ? 'As they were' : `Finished ${moment(closed.at)}`}, another in
            its place {moment(made)}: {why || 'no reason given'}.
          </span>
          <a
            class="button button-quiet"
            href={to.compare(part.id, `${inspection.id} ${id}`, inspection.id)}
          >
            What has changed
          </a>
        </li>
      ))}
    </ul>
  );
}
