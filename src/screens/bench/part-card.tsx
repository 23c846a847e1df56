import { useState } from 'preact/hooks';
import { DEFAULT_LEVEL } from '../../core/verdict/conformity';
import type { PartEntry } from '../../entry/part-entry';
import { type ListedPart, type PartState, shelfOf, stateOf } from '../../state/find-parts';
import { putBackPart, takeOutOfArchive } from '../../state/shelves';
import { level } from '../../state/shop-settings';
import type { PartRecord } from '../../store/records';
import { DrawnSign } from '../../widgets/drawn-sign';
import { STATE_LABELS } from '../../words/part-states';
import { sizesInWords } from '../../words/sizes';
import { fullDay } from '../../words/time';
import { to } from '../paths';

interface PartCardProps {
  readonly listed: ListedPart;
}

/** One part in the list: what it is, when it was last read and where it stands. */
export function PartCard({ listed: { part, standing, at } }: PartCardProps) {
  const { entry } = part;
  const state = stateOf(standing, level.value ?? DEFAULT_LEVEL);
  const shelf = shelfOf(part);
  return (
    <>
      <a class="card" href={to.part(part.id)}>
        <span class="card-head">
          <strong>{entry.name.trim() || 'Part without a name'}</strong>
          {state !== undefined && <StateBadge state={state} />}
        </span>
        <span class="soft">
          {lineOf(entry)}
          {part.closed !== undefined && ' · closed'}
        </span>
        <span class="soft small">
          {standing?.read === undefined ? 'Begun' : 'Read'} {fullDay(at)}
        </span>
      </a>
      {shelf === 'archive' && (
        <button type="button" class="button" onClick={() => takeOutOfArchive(part)}>
          Back to the bench
        </button>
      )}
      {shelf === 'removed' && <RemovedButtons part={part} />}
    </>
  );
}

const CLASSES: Readonly<Record<PartState, string>> = {
  'needs work': 'state-out',
  'too close': 'state-close',
  in: 'state-in',
  'not read': 'state-none',
};

const SIGNS = {
  'needs work': 'out',
  'too close': 'too close to call',
  in: 'in',
  'not read': 'none',
} as const satisfies Readonly<Record<PartState, string>>;

/** By word, sign and colour, so that none of them has to be seen alone. */
function StateBadge({ state }: { readonly state: PartState }) {
  return (
    <span class={`state ${CLASSES[state]}`}>
      <DrawnSign sign={SIGNS[state]} /> {STATE_LABELS[state]}
    </span>
  );
}

/** Back it comes with one tap; for good it goes only with two. */
function RemovedButtons({ part }: { readonly part: PartRecord }) {
  const [isAsking, ask] = useState(false);
  const [hasFailed, fail] = useState(false);
  const erase = async () => {
    const { eraseForGood } = await import('../../state/erase-for-good');
    fail(!(await eraseForGood(part)));
  };
  if (!isAsking) {
    return (
      <div class="row">
        <button type="button" class="button" onClick={() => putBackPart(part)}>
          Put it back
        </button>
        <button type="button" class="button button-quiet" onClick={() => ask(true)}>
          Erase for good
        </button>
      </div>
    );
  }
  return (
    <div class="note note-wrong stack">
      <p>
        All its readings, work and earlier versions go, and nothing brings them back but a backup.
      </p>
      {hasFailed && <p role="alert">It could not be erased: it is still there. Try once more.</p>}
      <div class="row">
        <button type="button" class="button" onClick={() => ask(false)}>
          Keep it
        </button>
        <button type="button" class="button" onClick={erase}>
          Yes, erase it for good
        </button>
      </div>
    </div>
  );
}

/** Job, material and sizes in one line, as far as they have been typed. */
function lineOf({ job, material, size }: PartEntry): string {
  return [job.trim(), material.trim(), sizesInWords(size)].filter(Boolean).join(' · ');
}
