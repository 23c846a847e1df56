import { beginMerge, endMerge, forgetMerges } from '../store/begun-merge';
import { loadRecoveryCopy, type RecoveryCopy } from '../store/recovery';
import { backUp } from './backup/back-up';
import type { BackupHead } from './backup/format';
import { lookOver, mergeBackup, type Overview, type Progress } from './backup/restore';
import { FileRefused } from './file-refused';
import { type PutBack, putBack } from './merge/put-back';
import type { Tally } from './merge/tally';

/** Work on everything that is stored: it takes its time, and is done beside the screen. */
export type Job =
  | { readonly kind: 'back up'; readonly head: BackupHead }
  | { readonly kind: 'look over'; readonly file: Blob }
  | { readonly kind: 'merge'; readonly file: File; readonly head: BackupHead }
  | { readonly kind: 'put back'; readonly at: string };

/** What each job comes to. */
export interface Results {
  readonly 'back up': Blob;
  readonly 'look over': Overview;
  readonly merge: Tally;
  readonly 'put back': PutBack;
}

export type Message =
  | { readonly kind: 'progress'; readonly records: number }
  | { readonly kind: 'done'; readonly result: Results[Job['kind']] }
  /** `refused` where it is the file that is wrong, in plain words. */
  | { readonly kind: 'failed'; readonly refused: boolean; readonly message: string };

/** Does the job. Before anything is merged, all that there is is kept as a recovery copy, once for a merge that is begun again. */
export async function doJob(job: Job, progress: Progress): Promise<Results[Job['kind']]> {
  switch (job.kind) {
    case 'back up':
      return backUp(job.head, progress);
    case 'look over':
      return lookOver(job.file, progress);
    case 'merge': {
      const merge = { at: job.head.made, file: job.file.name };
      if (!(await beginMerge(merge))) await beginMerge(merge, await copyOfAll(job.head));
      const tally = await mergeBackup(job.file, progress);
      await endMerge(merge.file);
      return tally;
    }
    case 'put back': {
      const copy = await loadRecoveryCopy();
      if (copy === undefined) throw new Error('There is no copy from before a merge');
      const count = await putBack(new Blob([copy.bytes]), job.at, progress);
      await forgetMerges();
      return count;
    }
  }
}

async function copyOfAll(head: BackupHead): Promise<RecoveryCopy> {
  const copy = await backUp(head, () => {});
  return { made: head.made, bytes: new Uint8Array(await copy.arrayBuffer()) };
}

/** What went wrong, as a message. */
export function failure(error: unknown): Message {
  const refused = error instanceof FileRefused;
  const message = error instanceof Error ? error.message : String(error);
  return { kind: 'failed', refused, message };
}
