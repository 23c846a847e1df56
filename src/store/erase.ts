import { promisifyRequest } from 'idb-keyval';
import { records } from './database';
import { chainPrefix, foundKey, PART_PREFIX, SUMMARY_PREFIX, versionPrefix } from './keys';

/** Erases a part, all that happened to it and the earlier states of both, in one transaction. */
export function erasePart(part: string): Promise<void> {
  const own = `${PART_PREFIX}${part}`;
  const ranges = [chainPrefix(part), versionPrefix(chainPrefix(part)), `${versionPrefix(own)}/`];
  return records('readwrite', (store) => {
    for (const key of [own, `${SUMMARY_PREFIX}${part}`, foundKey(part)]) store.delete(key);
    for (const prefix of ranges) store.delete(IDBKeyRange.bound(prefix, `${prefix}\uffff`));
    return promisifyRequest(store.transaction);
  });
}
