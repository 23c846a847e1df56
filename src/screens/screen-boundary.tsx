import type { ComponentChildren } from 'preact';
import { useEffect, useErrorBoundary, useState } from 'preact/hooks';
import { useLocation } from 'preact-iso';
import { makeBackup } from '../state/backups';
import { Page } from '../widgets/page';
import { saveFile } from '../widgets/share-file';
import { to } from './paths';

/** What is shown while a screen cannot be drawn; the next address is tried anew. */
export function ScreenBoundary({ children }: { readonly children: ComponentChildren }) {
  const { url } = useLocation();
  const [error, tryAgain] = useErrorBoundary((thrown) => console.error(thrown));
  useEffect(() => tryAgain(), [url]);
  if (error === undefined) return <>{children}</>;
  return <Failed error={error} onTryAgain={tryAgain} />;
}

interface FailedProps {
  readonly error: unknown;
  readonly onTryAgain: () => void;
}

function Failed({ error, onTryAgain }: FailedProps) {
  return (
    <Page title="This screen does not open" back={{ to: to.bench(), name: 'the bench' }}>
      <p>
        Something went wrong in the app while it drew this screen. What was entered is kept as it
        was, and the other screens work.
      </p>
      <div class="stack">
        <a class="button button-main" href={to.bench()}>
          To the bench
        </a>
        <SaveEverything />
        <button type="button" class="button" onClick={onTryAgain}>
          Try this screen again
        </button>
      </div>
      <p class="soft small">For whoever mends it: {String(error)}</p>
    </Page>
  );
}

function SaveEverything() {
  const [said, say] = useState('');
  const save = async () => {
    say('Writing…');
    try {
      saveFile(await makeBackup(() => undefined));
      say('');
    } catch (error) {
      console.error(error);
      say('The file could not be written. Nothing here has changed: try once more.');
    }
  };
  return (
    <>
      <button type="button" class="button" onClick={() => void save()}>
        Save all readings as a backup
      </button>
      <p role="status">{said}</p>
    </>
  );
}
