import { DISAGREEMENT } from '../../words/checks';
import { CHECKS } from './checks-sheet';

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
