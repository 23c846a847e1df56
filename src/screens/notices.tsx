import { gaveWay, refusal, savingState } from '../state/saving';
import { loading, unread } from '../state/shop';
import { applyUpdate, partMissing, updateReady } from '../updates';
import { NotSaved } from './not-saved';
import { UnreadNotice } from './unread-notice';

/** What the toolmaker has to know whatever screen is open. Nothing here acts by itself. */
export function Notices() {
  return (
    <div class="notices" role="status">
      {savingState.value === 'not saved' && <NotSaved refusal={refusal.value ?? 'refused'} />}
      {loading.value === 'failed' && savingState.value !== 'not saved' && (
        <p class="notice notice-wrong">
          The browser’s database will not open, so nothing can be kept. Close other tabs of this
          app, leave private browsing, and open it again.
        </p>
      )}
      {unread.value.length > 0 && <UnreadNotice unread={unread.value} />}
      {gaveWay.value && (
        <p class="notice notice-wrong">
          The same field was changed in two windows at once. The later one stands; the other is kept
          as an earlier version.
          <button
            type="button"
            class="button"
            onClick={() => {
              gaveWay.value = false;
            }}
          >
            Understood
          </button>
        </p>
      )}
      {partMissing.value && (
        <p class="notice notice-calm">
          A piece of the app is missing. Nothing that was typed is lost: with network, load it
          again.
          <button type="button" class="button" onClick={() => location.reload()}>
            Load again
          </button>
        </p>
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
