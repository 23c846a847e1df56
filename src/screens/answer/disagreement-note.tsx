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
      <button type="button" class="button" onClick={showChecks}>
        See which
      </button>
    </div>
  );
}

/** The focus goes along: what comes next on the keyboard is what may be wrong. */
function showChecks(): void {
  const heading = document.getElementById(CHECKS);
  heading?.focus({ preventScroll: true });
  heading?.scrollIntoView();
}
