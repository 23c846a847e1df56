import { promisifyRequest } from 'idb-keyval';
import { records as database } from './database';
import { keyOf } from './keys';
import { merge } from './merge';
import {
  type EnteredRecord,
  FORMAT,
  type StoredRecord,
  type SummaryRecord,
  type VersionRecord,
} from './records';
import { StorageError } from './storage-error';
import { isSame } from './three-way';
import { readStored } from './whole/read-stored';

const WHY = 'it was changed in two windows at once';

/** What was written. */
export interface Written {
  /** The records as they now lie there, in the order that they were given. */
  readonly records: readonly StoredRecord[];
  /** The states that had to give way, as they are kept. */
  readonly overruled: readonly VersionRecord[];
  /** Those that had been there, as it was agreed, and were no more: somebody, or the browser, erased them. */
  readonly erased: readonly StoredRecord[];
}

interface WrittenOne {
  readonly record: StoredRecord;
  readonly wasErased?: boolean;
  readonly overruled?: VersionRecord;
}

/** The state of a record, by its key, that the writer and the disk last had in common. */
export type Agreed = (key: string) => StoredRecord | undefined;

/**
 * Writes all of `records` in one transaction: either all are kept or none. What lies there in another
 * state than was agreed comes from another window: both states are put together, and what gives way
 * is kept as an earlier version.
 */
export function write(records: readonly StoredRecord[], agreed: Agreed): Promise<Written> {
  return database('readwrite', async (store) => {
    const { transaction } = store;
    const ended = endOf(transaction);
    try {
      const written = await Promise.all(
        records.map((record) => writeOne(store, record, agreed(keyOf(record)))),
      );
      // Nothing more is to come: it need not be asked for.
      transaction.commit();
      await ended;
      return {
        records: written.map(({ record }) => record),
        overruled: written.flatMap(({ overruled }) => overruled ?? []),
        erased: written.flatMap(({ record, wasErased }) => (wasErased ? [record] : [])),
      };
    } catch (error) {
      abort(transaction);
      // Why the transaction failed says more than what it made fail.
      const cause: unknown = await ended.then(
        () => undefined,
        (reason: unknown) => reason,
      );
      throw cause ?? error;
    }
  });
}

async function writeOne(
  store: IDBObjectStore,
  record: StoredRecord,
  agreed: StoredRecord | undefined,
): Promise<WrittenOne> {
  const key = keyOf(record);
  if (record.kind === 'summary') return writeSummary(store, record, agreed);
  // Versions never change.
  const isEntered = record.kind !== 'version';
  const there = isEntered ? await promisifyRequest<unknown>(store.get(key)) : undefined;
  const written =
    isEntered && there !== undefined
      ? await joined(store, record, there, agreed)
      : { record, wasErased: isEntered && agreed !== undefined };
  store.put(written.record, key);
  return written;
}

/**
 * Summaries are made again at any time. But where another window has changed what one was worked out from,
 * and said so, that word stays: what was worked out here holds no more.
 */
async function writeSummary(
  store: IDBObjectStore,
  record: SummaryRecord,
  agreed: StoredRecord | undefined,
): Promise<WrittenOne> {
  const there = saysNothing(record)
    ? undefined
    : await promisifyRequest<SummaryRecord | undefined>(store.get(keyOf(record)));
  const holdsNoMore = there !== undefined && saysNothing(there) && !isSame(there, agreed);
  const written = holdsNoMore ? there : record;
  store.put(written, keyOf(written));
  return { record: written };
}

const saysNothing = ({ standing, found }: SummaryRecord) =>
  standing === undefined && found === undefined;

/** The record together with what lies in its place. */
async function joined(
  store: IDBObjectStore,
  record: EnteredRecord,
  there: unknown,
  agreed: StoredRecord | undefined,
): Promise<WrittenOne> {
  const key = keyOf(record);
  const upgraded = readStored(there);
  if (!upgraded.ok) {
    if (upgraded.reason === 'newer') throw new StorageError('newer record', key);
    store.put(there, `aside/${key}/${record.changed}`);
    return { record };
  }
  if (isSame(upgraded.record, agreed)) return { record };
  const theirs = upgraded.record as EnteredRecord;
  const merged = merge(agreed as EnteredRecord | undefined, record, theirs);
  if (merged.overruled === undefined) return { record: merged.record };
  const overruled = await keepVersion(store, merged.overruled, merged.record);
  return { record: merged.record, overruled };
}

/** Keeps `overruled` beside the versions there are, even one that was changed in the same moment. */
async function keepVersion(
  store: IDBObjectStore,
  overruled: EnteredRecord,
  inPlace: EnteredRecord,
): Promise<VersionRecord> {
  for (let copy = 0; ; copy += 1) {
    const state = earlierState(overruled, inPlace, WHY);
    const version = copy === 0 ? state : { ...state, id: `${state.id} ${copy}` };
    const there = await promisifyRequest<VersionRecord | undefined>(store.get(keyOf(version)));
    if (there === undefined) store.put(version, keyOf(version));
    if (there === undefined || isSame(there.record, overruled)) return version;
  }
}

/** A state of a record to be kept beside `inPlace`, which took its place. */
export function earlierState(
  record: EnteredRecord,
  { changed }: EnteredRecord,
  why: string,
): VersionRecord {
  const time = { format: FORMAT, made: changed, changed };
  return { ...time, kind: 'version', of: keyOf(record), id: record.changed, record, why };
}

/** Resolves once all is on the disk. */
function endOf(transaction: IDBTransaction): Promise<void> {
  const ended = new Promise<void>((resolve, reject) => {
    transaction.oncomplete = () => resolve();
    transaction.onabort = () => reject(transaction.error ?? undefined);
  });
  ended.catch(() => undefined);
  return ended;
}

function abort(transaction: IDBTransaction): void {
  try {
    transaction.abort();
  } catch {
    // It has ended already.
  }
}
