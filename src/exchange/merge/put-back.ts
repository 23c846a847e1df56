import { groupedBy } from '../../core/grouped-by';
import { keyOf, PART_PREFIX, partsOfKey } from '../../store/keys';
import { type MergedStates, mergedStates } from '../../store/merged-states';
import type { EnteredRecord } from '../../store/records';
import { loadChain, readAt } from '../../store/shop-store';
import { readBackup } from '../backup/read-backup';
import { AT_ONCE } from '../backup/restore';
import { type Become, changeStored } from './merge-stored';
import { asVersion, type Lineage, unite } from './unite';

/** What putting back came to. */
export interface PutBack {
  /** Parts, and the shop's settings, that are as they were before the merge. */
  readonly asBefore: number;
  /** Parts that came with the merge: they are removed, and can be put back from the bench. */
  readonly removed: number;
  /** Parts on which somebody has worked since: they stay as they are. */
  readonly goneOn: number;
}

/** All that there was before the merge. */
interface Before {
  /** Each record's last change by then. */
  readonly changed: ReadonlyMap<string, string>;
  /** The parts that anything was there of. */
  readonly parts: ReadonlySet<string>;
  /** The records that the merge has changed, as they were. */
  readonly records: ReadonlyMap<string, EnteredRecord>;
}

/**
 * Puts everything back as it was before the last merge, and loses nothing by it: what the merge had
 * made of a record stays as an earlier version, parts that came with it are only removed, and a part
 * that somebody has worked on since stays as it is. Cut short, it can be done again to its end.
 *
 * @param copy everything before the merge, as a backup.
 * @param at now, ISO 8601 in UTC.
 */
export async function putBack(
  copy: Blob,
  at: string,
  progress: (records: number) => void,
): Promise<PutBack> {
  const merged = await mergedStates();
  const before = await everythingBefore(copy, merged);
  const count = { asBefore: 0, removed: 0, goneOn: 0 };
  let done = 0;
  for (const batch of inBatches(byPart([...merged.keys()]))) {
    const fates = await Promise.all(batch.map((part) => fateOf(part, merged, before, at)));
    await changeStored(new Map(fates.flatMap(({ become }) => become)));
    for (const { fate } of fates) count[fate] += 1;
    done += batch.reduce((sum, { keys }) => sum + keys.length, 0);
    progress(done);
  }
  return count;
}

/** A part that the merge has changed anything of, or the shop, and the records that it has changed. */
interface Touched {
  /** Undefined stands for the shop. */
  readonly part: string | undefined;
  readonly keys: readonly string[];
}

/** What becomes of a part, counted as, and of its records. */
interface Fate {
  readonly fate: keyof PutBack;
  readonly become: readonly (readonly [key: string, become: Become])[];
}

async function fateOf(
  { part, keys }: Touched,
  merged: MergedStates,
  before: Before,
  at: string,
): Promise<Fate> {
  const stored = part === undefined ? await readAt(keys) : await allOf(part);
  if (stored.some((record) => isSince(record as EnteredRecord, merged, before))) {
    return { fate: 'goneOn', become: [] };
  }
  if (part === undefined || before.parts.has(part)) {
    const become = keys.map((key) => [key, asBefore(key, merged, before, at)] as const);
    return { fate: 'asBefore', become };
  }
  return { fate: 'removed', become: [[`${PART_PREFIX}${part}`, asRemoved(at)]] };
}

/** Parts that are written in one transaction, with as many records as are merged in one. */
function* inBatches(all: readonly Touched[]): Generator<readonly Touched[]> {
  let batch: Touched[] = [];
  let records = 0;
  for (const one of all) {
    batch.push(one);
    records += one.keys.length;
    if (records < AT_ONCE) continue;
    yield batch;
    [batch, records] = [[], 0];
  }
  if (batch.length > 0) yield batch;
}

async function everythingBefore(copy: Blob, merged: MergedStates): Promise<Before> {
  const changed = new Map<string, string>();
  const records = new Map<string, EnteredRecord>();
  for await (const line of readBackup(copy)) {
    if (!line.ok || line.record.kind === 'version') continue;
    const key = keyOf(line.record);
    changed.set(key, line.record.changed);
    if (merged.has(key)) records.set(key, line.record);
  }
  const parts = new Set([...changed.keys()].flatMap((key) => partsOfKey(key).part ?? []));
  return { changed, parts, records };
}

/** Keys by the part that they belong to. */
function byPart(keys: readonly string[]): readonly Touched[] {
  const groups = groupedBy(keys, (key) => partsOfKey(key).part);
  return [...groups].map(([part, keys]) => ({ part, keys }));
}

async function allOf(part: string) {
  const [own, { records }] = await Promise.all([
    readAt([`${PART_PREFIX}${part}`]),
    loadChain(part),
  ]);
  return [...own, ...records];
}

/** True where somebody has entered or changed the record after the merge. */
function isSince(record: EnteredRecord, merged: MergedStates, before: Before): boolean {
  const key = keyOf(record);
  return record.changed !== (merged.get(key) ?? before.changed.get(key));
}

/** The record as it was before; where there was none, its state goes on as an earlier version only. */
function asBefore(key: string, merged: MergedStates, before: Before, at: string): Become {
  return (here) => {
    const { current, versions } = here;
    if (current === undefined || current.changed !== merged.get(key)) return here;
    const record = before.records.get(key);
    if (record === undefined) return unite({ versions }, { versions: [asVersion(current)] });
    return withState(here, { ...record, changed: later(at, current) });
  };
}

function asRemoved(at: string): Become {
  return (here) => {
    const { current } = here;
    if (current?.kind !== 'part' || current.removed !== undefined) return here;
    return withState(here, { ...current, removed: { at }, changed: later(at, current) });
  };
}

function withState(here: Lineage, current: EnteredRecord): Lineage {
  return unite(here, { current, versions: [] });
}

/** A moment after the last change, also where that was made by a clock that is ahead. */
function later(at: string, { changed }: EnteredRecord): string {
  return changed < at ? at : new Date(Date.parse(changed) + 1).toISOString();
}
