import { savingState } from '../state/saving';
import { loading, unread } from '../state/shop';
import { applyUpdate, partMissing, updateReady } from '../updates';

/** What the toolmaker has to know whatever screen is open. Nothing here acts by itself. */
export function Notices() {
  const { damaged, newer } = unread.value;
  return (
    <div class="notices" role="status">
      {savingState.value === 'not saved' && (
        <p class="notice notice-wrong">
          Not saved: the browser refused to store the last change. Free some space and type it
          again; until then keep this page open.
        </p>
      )}
      {loading.value === 'failed' && (
        <p class="notice notice-wrong">
          The browser’s database will not open, so nothing can be kept. Close other tabs of this
          app, leave private browsing, and open it again.
        </p>
      )}
      {damaged > 0 && (
        <p class="notice notice-wrong">
          {damaged} stored {damaged === 1 ? 'record is' : 'records are'} damaged. Left untouched;
          the rest is here.
        </p>
      )}
      {newer > 0 && (
        <p class="notice notice-wrong">
          {newer} stored {newer === 1 ? 'record was' : 'records were'} written by a newer version of
          the app. Left untouched: update the app to see them.
        </p>
      )}
      {partMissing.value && (
        <p class="notice notice-calm">A piece of the app is missing. Open it once with network.</p>
      )}
      {updateReady.value && (
        <p class="notice notice-calm">
          A new version is ready.
          <button type="button" class="button" onClick={() => void applyUpdate()}>
            Take it now
          </button>
        </p>
      )}
    </div>
  );
}
