import { unsavedFile } from '../state/unsaved-file';
import type { Refusal } from '../store/storage-error';
import { saveFile } from '../widgets/share-file';

const WHY: Readonly<Record<Refusal, string>> = {
  full: 'this device has no room left. Free some space',
  blocked: 'another window holds an older version of the app open. Close it',
  'newer app': 'a newer version of the app is in use here. Load this page again',
  'newer record': 'a newer version of the app has written here. Update this one',
  silent:
    'the browser’s database does not answer. Wait a little, or close other windows of the app',
  refused:
    'the browser refuses to store anything here. Private browsing or its settings may be why',
};

/** What was typed is in this page alone: why, and the way out. */
export function NotSaved({ refusal }: { readonly refusal: Refusal }) {
  return (
    <p class="notice notice-wrong">
      <span>
        <b>Not saved:</b> {WHY[refusal]}. Keep this page open: it tries again by itself. To be safe,
        take what was typed out as a file.
      </span>
      <button type="button" class="button" onClick={() => void unsavedFile().then(saveFile)}>
        Save as a file
      </button>
    </p>
  );
}
