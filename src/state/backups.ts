import { signal } from '@preact/signals';
import { ENDING } from '../exchange/backup/format';
import type { Overview, Progress } from '../exchange/backup/restore';
import { FileRefused } from '../exchange/file-refused';
import type { Job, Message, Results } from '../exchange/jobs';
import type { PutBack } from '../exchange/merge/put-back';
import type { Tally } from '../exchange/merge/tally';
import { type BegunMerge, loadBegunMerge } from '../store/begun-merge';
import { isAnyMerged } from '../store/merged-states';
import { tellOtherWindows } from '../store/other-windows';
import { loadRecoveryCopy } from '../store/recovery';
import { agreedKeys } from './agreed';
import { chain } from './chain';
import { readAgain } from './follow';
import { openShop } from './open-shop';
import { untilSaved } from './saving';
import { now } from './shop';
import { summaries } from './summaries';

const LAST = 'highedge last backup';

/** When this device last gave a backup out, ISO 8601 in UTC; undefined where it never has. */
export const lastBackup = signal<string | undefined>(readLast());

function readLast(): string | undefined {
  try {
    return localStorage.getItem(LAST) ?? undefined;
  } catch {
    return undefined;
  }
}

function noteBackup(at: string): void {
  lastBackup.value = at;
  try {
    localStorage.setItem(LAST, at);
  } catch {
    // Its age is then told as long as this page is open.
  }
}

/** Everything on this device as a file. */
export async function makeBackup(progress: Progress): Promise<File> {
  const head = { made: now(), app: __APP_VERSION__ };
  await untilSaved();
  const blob = await run({ kind: 'back up', head }, progress);
  noteBackup(head.made);
  return new File([blob], backupName(head.made), { type: 'application/gzip' });
}

/** 'highedge 2024-03-05 14-07.highedge' */
function backupName(made: string): string {
  return `highedge ${made.slice(0, 16).replace('T', ' ').replace(':', '-')}${ENDING}`;
}

/**
 * What merging the file would do.
 *
 * @throws FileRefused where it is no backup that can be taken.
 */
export async function lookOverBackup(file: Blob, progress: Progress): Promise<Overview> {
  await untilSaved();
  return run({ kind: 'look over', file }, progress);
}

/** Merges the good records of a backup; all that was there before is kept as a recovery copy. */
export async function mergeIn(file: File, progress: Progress): Promise<Tally> {
  await untilSaved();
  const head = { made: now(), app: __APP_VERSION__ };
  const tally = await run({ kind: 'merge', file, head }, progress);
  await takeUpAll();
  return tally;
}

/** What this page and the others hold may be another state now. */
async function takeUpAll(): Promise<void> {
  chain.value = undefined;
  summaries.value = new Map();
  await readAgain(agreedKeys());
  await openShop();
  tellOtherWindows('everything');
  await lookForBegunMerge();
}

/** Puts everything back as it was before the last merge; what was entered since stays. */
export async function putBackAll(progress: Progress): Promise<PutBack> {
  await untilSaved();
  const count = await run({ kind: 'put back', at: now() }, progress);
  await takeUpAll();
  return count;
}

/** True where the last merge has changed something that can be put back as it was. */
export const canPutBack = signal(false);

/** A merge that was cut short, as far as it has been looked for. */
export const begunMerge = signal<BegunMerge | undefined>(undefined);

/** Looks whether a merge was cut short: a part of its file is in; and whether the last one can be put back. */
export async function lookForBegunMerge(): Promise<void> {
  try {
    begunMerge.value = await loadBegunMerge();
    canPutBack.value = await isAnyMerged();
  } catch (error) {
    // That the database will not open is told elsewhere.
    console.error(error);
  }
}

/** The state before the last merge, as a file; undefined where nothing was ever merged. */
export async function recoveryFile(): Promise<File | undefined> {
  const copy = await loadRecoveryCopy();
  if (copy === undefined) return undefined;
  return new File([copy.bytes], `before merging, ${backupName(copy.made)}`, {
    type: 'application/gzip',
  });
}

/** Does a job in a worker: every browser that can pack a file has one. */
async function run<J extends Job>(job: J, progress: Progress): Promise<Results[J['kind']]> {
  const worker = new Worker(new URL('../exchange/worker.ts', import.meta.url), { type: 'module' });
  try {
    return (await answer(worker, job, progress)) as Results[J['kind']];
  } finally {
    worker.terminate();
  }
}

function answer(worker: Worker, job: Job, progress: Progress): Promise<unknown> {
  return new Promise((resolve, reject) => {
    worker.onmessage = ({ data }: MessageEvent<Message>) => {
      if (data.kind === 'progress') progress(data.records);
      else if (data.kind === 'done') resolve(data.result);
      else reject(data.refused ? new FileRefused(data.message) : new Error(data.message));
    };
    worker.onerror = () => reject(new Error('The part of the app that does this did not load'));
    worker.postMessage(job);
  });
}
