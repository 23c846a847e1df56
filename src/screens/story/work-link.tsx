import { wedgeOf } from '../../core/correction/removal';
import { readPart } from '../../entry/read-part';
import type { Link } from '../../state/chain';
import { removalAdvised, workOutcome } from '../../state/outcomes';
import { shop } from '../../state/shop';
import type { PartRecord, WorkRecord } from '../../store/records';
import { deviation as shown } from '../../words/numbers';
import { moment } from '../../words/time';
import { to } from '../paths';
import { METHOD_NAMES } from '../work/method-names';
import { OutcomeFacts } from './outcome-facts';

interface WorkLinkProps {
  readonly part: PartRecord;
  readonly work: WorkRecord;
  readonly links: readonly Link[];
}

/** One piece of work in a part's story: what was done, and what the next readings made of it. */
export function WorkLink({ part, work, links }: WorkLinkProps) {
  const outcome = workOutcome(work, links, part.entry);
  const { block } = readPart(part.entry).part ?? {};
  const amount = work.amount.text.trim();
  const { deviation } = shop.value.units;
  return (
    <article class="sheet">
      <div class="sheet-head">
        <h3>
          {METHOD_NAMES[work.method]} the {work.face}
        </h3>
        <a class="button" href={to.work(part.id, work.id)}>
          Show
        </a>
      </div>
      <p class="soft small">{moment(work.made)}</p>
      <p>
        {[
          block && `${shown(wedgeOf(block, removalAdvised(work)), deviation)} advised`,
          work.abrasive.trim(),
          amount && `${amount} ${work.amount.unit}`,
          work.note.trim(),
        ]
          .filter(Boolean)
          .join(' · ')}
      </p>
      {outcome === undefined ? (
        <p class="soft">Measure again to see what it has done.</p>
      ) : (
        <OutcomeFacts outcome={outcome} work={work} />
      )}
    </article>
  );
}
