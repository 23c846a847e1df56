import { isBlankSheet, listed, shelfOf } from '../state/find-parts';
import { useWide } from '../widgets/wide';
import { sizesInWords } from '../words/sizes';
import { to } from './paths';

/** More than these are looked for at the bench. */
const MOST = 30;

interface PartsBesideProps {
  /** Id of the part that the screen shows. */
  readonly current: string;
  /** How wide the screen must be for it, rem. */
  readonly from: number;
}

/** At a desk: the newest parts beside the one at hand. */
export function PartsBeside({ current, from }: PartsBesideProps) {
  if (!useWide(from)) return null;
  const newest = listed.value
    .filter((one) => one.part.id === current || !isBlankSheet(one))
    .filter(({ part }) => shelfOf(part) === 'bench')
    .slice(0, MOST);
  return (
    <nav class="beside" aria-label="Parts">
      <a class="button" href={to.bench()}>
        All parts
      </a>
      <ul>
        {newest.map(({ part: { id, entry } }) => (
          <li key={id}>
            <a
              class="beside-part"
              href={to.part(id)}
              aria-current={id === current ? 'page' : undefined}
            >
              <strong>{entry.name.trim() || 'Part without a name'}</strong>
              <span class="soft small">
                {[entry.job.trim(), sizesInWords(entry.size)].filter(Boolean).join(' · ')}
              </span>
            </a>
          </li>
        ))}
      </ul>
    </nav>
  );
}
