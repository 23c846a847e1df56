import { promisifyRequest } from 'idb-keyval';
import { keysUnder, records } from './database';
import { keyOf } from './keys';
import type { EnteredRecord } from './records';

/*
 * What the last merge has brought or changed, so that it can be told from what was entered since. It is
 * noted in the transaction that brings it.
 */

const PREFIX = 'merged/';

/** The keys of all that was noted. */
const noted = () => keysUnder(PREFIX);

/** States by the key of their record, as the time of their last change. */
export type MergedStates = ReadonlyMap<string, string>;

/** The note on `changed`, which became what they are in one transaction; none where nothing did. */
export function noteOf(changed: readonly EnteredRecord[]): readonly [string, unknown] | undefined {
  const [first] = changed;
  if (first === undefined) return undefined;
  // No record comes to the same state twice.
  const key = `${PREFIX}${keyOf(first)}/${first.changed}`;
  return [key, new Map(changed.map((record) => [keyOf(record), record.changed]))];
}

/** What the last merge has brought or changed, as it left it. */
export async function mergedStates(): Promise<MergedStates> {
  const notes = await records('readonly', (store) => {
    return promisifyRequest<MergedStates[]>(store.getAll(noted()));
  });
  const latest = new Map<string, string>();
  for (const [key, changed] of notes.flatMap((states) => [...states])) {
    // A merge that was begun again may have changed a record twice.
    if (changed > (latest.get(key) ?? '')) latest.set(key, changed);
  }
  return latest;
}

/** Whether it has brought or changed anything: the notes of a large shop are long. */
export async function isAnyMerged(): Promise<boolean> {
  const notes = await records('readonly', (store) => promisifyRequest(store.count(noted())));
  return notes > 0;
}

/** Forgets it, within a transaction. */
export function eraseMergedStates(store: IDBObjectStore): void {
  store.delete(noted());
}
