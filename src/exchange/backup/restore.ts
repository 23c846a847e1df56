import { mergeStored, outcomesOf } from '../merge/merge-stored';
import { counted, NOTHING, type Outcome, type Tally } from '../merge/tally';
import type { KeptRecord } from '../shape/records';
import type { BackupHead } from './format';
import { readBackup, readBackupHead } from './read-backup';

/** What is in a backup, and what merging it would do. Nothing is written for it. */
export interface Overview {
  readonly head: BackupHead;
  readonly good: number;
  readonly bad: number;
  /** The first of the bad ones, for the person to see. */
  readonly examples: readonly { readonly line: number; readonly message: string }[];
  readonly tally: Tally;
}

/** Told after each group, with the number of records that are done. */
export type Progress = (records: number) => void;

/** Records that are looked at, or written, in one transaction. */
export const AT_ONCE = 500;

/** Bad lines that are told in full. */
const EXAMPLES = 20;

/**
 * Looks a whole backup over, before any of it is taken.
 *
 * @throws FileRefused where the file as a whole cannot be taken.
 */
export async function lookOver(file: Blob, progress: Progress = () => {}): Promise<Overview> {
  const head = await readBackupHead(file);
  const examples: { readonly line: number; readonly message: string }[] = [];
  let bad = 0;
  const told = (line: number, message: string) => {
    bad += 1;
    if (examples.length < EXAMPLES) examples.push({ line, message });
  };
  const { good, tally } = await inGroups(file, outcomesOf, progress, told);
  return { head, good, bad, examples, tally };
}

/** Merges every good record of a backup into the store. */
export async function mergeBackup(file: Blob, progress: Progress = () => {}): Promise<Tally> {
  return (await inGroups(file, mergeStored, progress)).tally;
}

async function inGroups(
  file: Blob,
  work: (records: readonly KeptRecord[]) => Promise<readonly Outcome[]>,
  progress: Progress,
  told: (line: number, message: string) => void = () => {},
): Promise<{ readonly good: number; readonly tally: Tally }> {
  let tally = NOTHING;
  let good = 0;
  let group: KeptRecord[] = [];
  let underWay = Promise.resolve();
  const workOn = async (records: readonly KeptRecord[]) => {
    tally = counted(tally, await work(records));
    good += records.length;
    progress(good);
  };
  // While the database works on one group, the next one is read and looked over.
  const finish = async () => {
    await underWay;
    underWay = workOn(group);
    underWay.catch(() => {});
    group = [];
  };
  try {
    for await (const line of readBackup(file)) {
      if (line.ok) group.push(line.record);
      else told(line.line, line.message);
      if (group.length >= AT_ONCE) await finish();
    }
    if (group.length > 0) await finish();
  } finally {
    await underWay;
  }
  return { good, tally };
}
