import type { Link } from '../../state/chain';
import { statesOf } from '../../state/compare';
import type { PartRecord } from '../../store/records';
import { to } from '../paths';
import { InspectionLink } from './inspection-link';
import { RequirementCharts } from './requirement-charts';
import { WorkLink } from './work-link';

interface StoryProps {
  readonly part: PartRecord;
  readonly links: readonly Link[];
}

/** Readings, verdicts and work on a part, in order. */
export function Story({ part, links }: StoryProps) {
  if (links.length === 0) return null;
  return (
    <section class="stack" aria-labelledby="story-heading">
      <div class="sheet-head">
        <h2 id="story-heading">Its story</h2>
        {statesOf(links).length > 1 && (
          <a class="button" href={to.compare(part.id)}>
            Compare two
          </a>
        )}
      </div>
      <RequirementCharts part={part} links={links} />
      <ol class="rail">
        {links.map((link) => (
          <li key={link.id} class={link.kind}>
            {link.kind === 'inspection' ? (
              <InspectionLink part={part} inspection={link} />
            ) : (
              <WorkLink part={part} work={link} links={links} />
            )}
          </li>
        ))}
      </ol>
    </section>
  );
}
