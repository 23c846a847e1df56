import { useState } from 'preact/hooks';
import { workOut } from '../../state/answers';
import type { Link } from '../../state/chain';
import { statesOf } from '../../state/compare';
import type { PartRecord } from '../../store/records';
import { InTurns } from '../../widgets/in-turns';
import { usePrepared } from '../../widgets/later';
import { to } from '../paths';
import { InspectionLink } from './inspection-link';
import { RequirementCharts } from './requirement-charts';
import { WorkLink } from './work-link';

interface StoryProps {
  readonly part: PartRecord;
  readonly links: readonly Link[];
}

/** Links that are drawn before somebody asks for all: a long story is not to keep the part waiting. */
const LATEST = 7;

/** Readings, verdicts and work on a part, in order: once they are worked out, each in a turn of its own. */
export function Story({ part, links }: StoryProps) {
  const worked = usePrepared(links, (all) =>
    all.map((link) => () => link.kind === 'inspection' && workOut(link, part.entry)),
  );
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
      {worked && <Told part={part} links={worked} />}
    </section>
  );
}

/** The requirements in time, and link for link. */
function Told({ part, links }: StoryProps) {
  const [isWhole, showWhole] = useState(false);
  const shown = isWhole ? links : links.slice(-LATEST);
  return (
    <InTurns>
      <RequirementCharts part={part} links={links} />
      {shown.length < links.length && (
        <button type="button" class="button" onClick={() => showWhole(true)}>
          Show its {links.length - shown.length} earlier readings and work
        </button>
      )}
      <ol class="rail">
        <InTurns>
          {shown.map((link) => (
            <li key={link.id} class={link.kind}>
              {link.kind === 'inspection' ? (
                <InspectionLink part={part} inspection={link} />
              ) : (
                <WorkLink part={part} work={link} links={links} />
              )}
            </li>
          ))}
        </InTurns>
      </ol>
    </InTurns>
  );
}
