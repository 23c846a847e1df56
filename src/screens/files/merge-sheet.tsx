import { useEffect, useState } from 'preact/hooks';
import type { Overview } from '../../exchange/backup/restore';
import { FileRefused } from '../../exchange/file-refused';
import type { PutBack } from '../../exchange/merge/put-back';
import type { Tally } from '../../exchange/merge/tally';
import { arrived, takeSharedFiles } from '../../state/arrived-file';
import {
  begunMerge,
  canPutBack,
  lookForBegunMerge,
  lookOverBackup,
  mergeIn,
  putBackAll,
} from '../../state/backups';
import { type OpenedTable, openTable } from '../../state/opened-table';
import { wholeTableAsBackup } from '../../state/whole-table';
import { ChooseFile } from '../../widgets/choose-file';
import { putBackInWords } from '../../words/merging';
import { moment } from '../../words/time';
import { OverviewFacts, TallyFacts } from './overview-facts';
import { TableArrived } from './table-arrived';

type Step =
  | { readonly at: 'choose' }
  | { readonly at: 'working'; readonly what: string; readonly records: number }
  | { readonly at: 'refused'; readonly message: string }
  | { readonly at: 'looked over'; readonly file: File; readonly overview: Overview }
  | { readonly at: 'merged'; readonly tally: Tally }
  | { readonly at: 'table'; readonly table: OpenedTable }
  | { readonly at: 'put back'; readonly count: PutBack };

/** A backup in: looked over first, merged once the person says so. A table is asked which part it belongs to. */
export function MergeSheet() {
  const [step, setStep] = useState<Step>({ at: 'choose' });
  const [others, setOthers] = useState(0);
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
      const table = await openTable(file, progress);
      if (table !== undefined) return { at: 'table', table };
      return { at: 'looked over', file, overview: await lookOverBackup(file, progress) };
    });
  const merge = (file: File) =>
    attempt('Merging', async (progress) => {
      return { at: 'merged', tally: await mergeIn(file, progress) };
    });
  const takeWhole = (table: OpenedTable) =>
    attempt('Taking it in', async (progress) => {
      return { at: 'merged', tally: await mergeIn(await wholeTableAsBackup(table), progress) };
    });
  const putBack = () =>
    attempt('Putting back', async (progress) => {
      return { at: 'put back', count: await putBackAll(progress) };
    });
  useEffect(() => void lookForBegunMerge(), []);
  useEffect(() => {
    takeSharedFiles().catch((error: unknown) => console.error(error));
  }, []);
  const came = arrived.value;
  useEffect(() => {
    if (came === undefined) return;
    arrived.value = undefined;
    setOthers(came.others);
    void look(came.file);
  }, [came]);
  return (
    <section class="sheet" aria-labelledby="merge-heading">
      <h2 id="merge-heading">Open a backup or a table</h2>
      <p>
        A backup is merged into what is here: nothing is overwritten, and the same file twice
        changes nothing. Of two states of one thing the later goes on, the other is kept as a
        version. A table of readings (CSV) goes to its parts, as new inspections.
      </p>
      {step.at !== 'working' && begunMerge.value !== undefined && (
        <p class="note note-warning">
          Merging ‘{begunMerge.value.file}’, begun {moment(begunMerge.value.at)}, is not finished: a
          part of it is in, the rest is not. Unless another window is at it now, merge the same file
          again.
        </p>
      )}
      {step.at !== 'working' && (
        <ChooseFile
          label="Choose a file, or drop it here"
          refused={step.at === 'refused' ? 'file-refused' : undefined}
          onFile={(file) => {
            setOthers(0);
            void look(file);
          }}
        />
      )}
      {others > 0 && (
        <p class="note">
          {others === 1 ? 'One more file' : `${others} more files`} came along with it. Open them
          one after the other.
        </p>
      )}
      <div role="status" class="stack">
        {step.at === 'working' && (
          <p>
            {step.what}: {step.records} records so far…
          </p>
        )}
        {step.at === 'refused' && (
          <p id="file-refused" class="note note-wrong">
            {step.message}
          </p>
        )}
        {step.at === 'table' && (
          <TableArrived table={step.table} onTakeWhole={() => void takeWhole(step.table)} />
        )}
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
        {step.at === 'put back' && <p class="note note-good">{putBackInWords(step.count)}</p>}
      </div>
      {step.at !== 'working' && canPutBack.value && (
        <button type="button" class="button" onClick={() => void putBack()}>
          Put back what was here before the last merge
        </button>
      )}
    </section>
  );
}

function messageOf(error: unknown): string {
  if (error instanceof FileRefused) return `This file cannot be taken. ${error.message}.`;
  return 'That did not work. What is here has not been lost: a merge can be begun again at any time.';
}
