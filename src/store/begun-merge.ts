import { get, promisifyRequest } from 'idb-keyval';
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

/**
 * Keeps all as it was before the merge, and that the merge has begun, both or neither. What was kept
 * before a merge that was cut short stays until that one has come to its end: a copy that is made
 * now has a part of its file in it.
 *
 * @returns false where nothing is begun, because a copy is needed and none was given.
 */
export function beginMerge(merge: BegunMerge, before?: RecoveryCopy): Promise<boolean> {
  return records('readwrite', async (store) => {
    const begun = begunIn(await promisifyRequest<unknown>(store.get(KEY)));
    if (begun.length === 0) {
      if (before === undefined) return false;
      store.put(before, RECOVERY_KEY);
      eraseMergedStates(store);
    }
    const others = begun.filter(({ file }) => file !== merge.file);
    const known = begun.find(({ file }) => file === merge.file);
    store.put([...others, known ?? merge], KEY);
    await promisifyRequest(store.transaction);
    return true;
  });
}

/** To be called once the whole of `file` is in. */
export function endMerge(file: string): Promise<void> {
  return records('readwrite', async (store) => {
    const begun = begunIn(await promisifyRequest<unknown>(store.get(KEY)));
    const rest = begun.filter((merge) => merge.file !== file);
    if (rest.length === 0) store.delete(KEY);
    else store.put(rest, KEY);
    return promisifyRequest(store.transaction);
  });
}

/** Once all is as it was before the merges, finished or not, nothing of them is left to be done or put back. */
export function forgetMerges(): Promise<void> {
  return records('readwrite', (store) => {
    store.delete(KEY);
    eraseMergedStates(store);
    return promisifyRequest(store.transaction);
  });
}

/** The merge that has not come to its end, of several the one begun last; undefined where every one has. */
export async function loadBegunMerge(): Promise<BegunMerge | undefined> {
  return begunIn(await get<unknown>(KEY, records)).at(-1);
}

/** It is told even where it is damaged: what was cut short is still to be finished. The first version kept one by itself. */
function begunIn(stored: unknown): readonly BegunMerge[] {
  if (stored === undefined) return [];
  return (Array.isArray(stored) ? stored : [stored]).map((one: unknown) => {
    const { at = '', file } = (one ?? {}) as Partial<BegunMerge>;
    const isTime = !Number.isNaN(Date.parse(at));
    return { at: isTime ? at : new Date(0).toISOString(), file: String(file) };
  });
}
