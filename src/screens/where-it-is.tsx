import { putBackPart, takeOutOfArchive } from '../state/shelves';
import type { PartRecord } from '../store/records';
import { fullDay } from '../words/time';

/** Says that a part is not on the bench, with the way back to it. */
export function WhereItIs({ part }: { readonly part: PartRecord }) {
  const { removed, archived } = part;
  if (removed !== undefined) {
    return (
      <p class="note note-warning">
        Removed {fullDay(removed.at)}.{' '}
        <button type="button" class="button" onClick={() => putBackPart(part)}>
          Put it back
        </button>
      </p>
    );
  }
  if (archived === undefined) return null;
  return (
    <p class="note">
      In the archive since {fullDay(archived.at)}.{' '}
      <button type="button" class="button" onClick={() => takeOutOfArchive(part)}>
        Back to the bench
      </button>
    </p>
  );
}
