import type { InspectionAnswer } from '../../core/inspection/inspect';
import { DISAGREEMENT } from '../../words/checks';
import { CHECKS } from './checks-sheet';

/** True where a reading does not fit the others: then no figure is to be trusted. */
export function disagrees({ suspects, crowns }: InspectionAnswer): boolean {
  return suspects.length > 0 || crowns.length > 0;
}

/** Stands before the figures that come from readings which do not fit each other, and leads to what may be wrong. */
export function DisagreementNote() {
  return (
    <div class="note note-warning stack">
      <p>
        <b>{DISAGREEMENT}</b> by more than their doubt: what follows is not to be trusted until it
        is known why.
      </p>
      <button
        type="button"
        class="button"
        onClick={() => document.getElementById(CHECKS)?.scrollIntoView()}
      >
        See which
      </button>
    </div>
  );
}
