import { useEffect, useState } from 'preact/hooks';
import type { Overview } from '../../exchange/backup/restore';
import { FileRefused } from '../../exchange/file-refused';
import type { Tally } from '../../exchange/merge/tally';
import { arrivedFile } from '../../state/arrived-file';
import { lookOverBackup, mergeIn } from '../../state/backups';
import { ChooseFile } from '../../widgets/choose-file';
import { OverviewFacts, TallyFacts } from './overview-facts';

type Step =
  | { readonly at: 'choose' }
  | { readonly at: 'working'; readonly what: string; readonly records: number }
  | { readonly at: 'refused'; readonly message: string }
  | { readonly at: 'looked over'; readonly file: File; readonly overview: Overview }
  | { readonly at: 'merged'; readonly tally: Tally };

/** A backup in: looked over first, merged once the person says so. */
export function MergeSheet() {
  const [step, setStep] = useState<Step>({ at: 'choose' });
  const attempt = async (what: string, work: (progress: (n: number) => void) => Promise<Step>) => {
    setStep({ at: 'working', what, records: 0 });
    try {
      setStep(await work((records) => setStep({ at: 'working', what, records })));
    } catch (error) {
      if (!(error instanceof FileRefused)) console.error(error);
      setStep({ at: 'refused', message: messageOf(error) });
    }
  };
  const look = (file: File) =>
    attempt('Looking it over', async (progress) => {
      return { at: 'looked over', file, overview: await lookOverBackup(file, progress) };
    });
  const merge = (file: File) =>
    attempt('Merging', async (progress) => {
      return { at: 'merged', tally: await mergeIn(file, progress) };
    });
  const arrived = arrivedFile.value;
  useEffect(() => {
    if (arrived === undefined) return;
    arrivedFile.value = undefined;
    void look(arrived);
  }, [arrived]);
  return (
    <section class="sheet" aria-labelledby="merge-heading">
      <h2 id="merge-heading">Open a backup</h2>
      <p>
        It is merged into what is here: nothing is overwritten, and the same file twice changes
        nothing. Of two states of one thing the later goes on, the other is kept as a version.
      </p>
      {step.at !== 'working' && (
        <ChooseFile label="Choose a backup, or drop it here" onFile={(file) => void look(file)} />
      )}
      <div role="status" class="stack">
        {step.at === 'working' && (
          <p>
            {step.what}: {step.records} records so far…
          </p>
        )}
        {step.at === 'refused' && <p class="note note-wrong">{step.message}</p>}
        {step.at === 'looked over' && (
          <>
            <OverviewFacts overview={step.overview} />
            <button
              type="button"
              class="button button-main"
              disabled={step.overview.good === 0}
              onClick={() => void merge(step.file)}
            >
              {step.overview.bad > 0 ? 'Merge the good records' : 'Merge it'}
            </button>
          </>
        )}
        {step.at === 'merged' && (
          <>
            <p class="note note-good">Merged. A copy from before is kept on this device.</p>
            <TallyFacts tally={step.tally} />
          </>
        )}
      </div>
    </section>
  );
}

function messageOf(error: unknown): string {
  if (error instanceof FileRefused) return `This file cannot be taken. ${error.message}.`;
  return 'That did not work. What is here has not been lost: a merge can be begun again at any time.';
}
