import { del, get, promisifyRequest } from 'idb-keyval';
import { records } from './database';
import { eraseMergedStates } from './merged-states';
import { RECOVERY_KEY, type RecoveryCopy } from './recovery';

const KEY = 'merging';

/** A merge that has begun and not come to its end: a part of the file is in, the rest is not. */
export interface BegunMerge {
  /** When it began, ISO 8601 in UTC. */
  readonly at: string;
  /** What the file is called. */
  readonly file: string;
}

/** Keeps all as it was before the merge, and that the merge has begun, both or neither. */
export function beginMerge(merge: BegunMerge, before: RecoveryCopy): Promise<void> {
  return records('readwrite', (store) => {
    store.put(before, RECOVERY_KEY);
    store.put(merge, KEY);
    eraseMergedStates(store);
    return promisifyRequest(store.transaction);
  });
}

/** To be called once the whole file is in. */
export function endMerge(): Promise<void> {
  return del(KEY, records);
}

/** The merge that has not come to its end; undefined where every one has. */
export async function loadBegunMerge(): Promise<BegunMerge | undefined> {
  const stored = await get<Partial<BegunMerge>>(KEY, records);
  if (stored === undefined) return undefined;
  const { at = '', file } = stored;
  // It is told even where it is damaged: what was cut short is still to be finished.
  return { at: Number.isNaN(Date.parse(at)) ? new Date(0).toISOString() : at, file: String(file) };
}
