import { useEffect, useState } from 'preact/hooks';
import { lastBackup, makeBackup, recoveryFile } from '../../state/backups';
import { askToKeep, isKept, isTabOnIos, lookWhetherKept } from '../../state/keeping';
import { now } from '../../state/shop';
import { Page } from '../../widgets/page';
import { saveFile, shareFile } from '../../widgets/share-file';
import { daysAgo } from '../../words/merging';
import { to } from '../paths';
import { MergeSheet } from './merge-sheet';
import { ShopTablesSheet } from './shop-tables-sheet';

/** Everything out as a file, and back in. */
export function FilesScreen() {
  return (
    <Page title="Backup and files" back={{ to: to.bench(), name: 'the bench' }}>
      <BackupSheet />
      <MergeSheet />
      <ShopTablesSheet />
      <KeptSheet />
    </Page>
  );
}

function BackupSheet() {
  const [working, setWorking] = useState<number | undefined>();
  const [failed, setFailed] = useState<string | undefined>();
  const make = async () => {
    setFailed(undefined);
    setWorking(0);
    try {
      await shareFile(await makeBackup(setWorking));
    } catch (error) {
      console.error(error);
      setFailed('The backup could not be made. Nothing here has changed: try once more.');
    } finally {
      setWorking(undefined);
    }
  };
  return (
    <section class="sheet" aria-labelledby="backup-heading">
      <h2 id="backup-heading">Backup</h2>
      <p>
        {lastBackup.value === undefined
          ? 'This device has never given a backup out.'
          : `The last one: ${daysAgo(lastBackup.value, now())}.`}{' '}
        All that you enter is on this device alone: a lost phone takes it along.
      </p>
      <button
        type="button"
        class="button button-main"
        disabled={working !== undefined}
        onClick={() => void make()}
      >
        Back everything up
      </button>
      <p role="status">{working !== undefined && `Writing: ${working} records so far…`}</p>
      {failed !== undefined && <p class="note note-wrong">{failed}</p>}
      <p class="soft small">
        One file with every part, reading, correction and earlier version. It is compressed JSON
        (gzip): other programs can read it too.
      </p>
    </section>
  );
}

/** How safe what is stored is from the browser itself. */
function KeptSheet() {
  const [copy, setCopy] = useState<File | undefined>();
  useEffect(() => {
    void lookWhetherKept();
    recoveryFile().then(setCopy, console.error);
  }, []);
  return (
    <section class="sheet" aria-labelledby="kept-heading">
      <h2 id="kept-heading">How safe it is in this browser</h2>
      {isTabOnIos() && (
        <p class="note note-warning">
          On an iPhone or iPad, what a page in a tab has stored is removed after seven days without
          a visit. Put the app on the home screen (Share, Add to Home Screen): there it stays. Back
          up first, and open the backup there.
        </p>
      )}
      {isKept.value === true ? (
        <p>The browser keeps it even where space runs short.</p>
      ) : (
        <>
          <p>The browser may clear it where space runs short, unless it is asked not to.</p>
          <button type="button" class="button" onClick={() => void askToKeep()}>
            Ask the browser to keep it
          </button>
          {isKept.value === false && (
            <p class="soft small">
              Not promised yet. Browsers agree more readily once the app is installed.
            </p>
          )}
        </>
      )}
      {copy !== undefined && (
        <>
          <p>Before the last merge a copy of everything was kept.</p>
          <button type="button" class="button" onClick={() => saveFile(copy)}>
            Save the copy from before the merge
          </button>
        </>
      )}
    </section>
  );
}
