import { promisifyRequest } from 'idb-keyval';
import { keysUnder, records } from './database';
import { chainPrefix, foundKey, PART_PREFIX, SUMMARY_PREFIX, versionPrefix } from './keys';

/**
 * Erases a part, all that happened to it and the earlier states of both, in one transaction.
 *
 * @returns the keys of what was erased.
 */
export function erasePart(part: string): Promise<readonly string[]> {
  const own = `${PART_PREFIX}${part}`;
  const ranges = [chainPrefix(part), versionPrefix(chainPrefix(part)), `${versionPrefix(own)}/`];
  return records('readwrite', async (store) => {
    const keys = [own, `${SUMMARY_PREFIX}${part}`, foundKey(part)];
    for (const key of keys) store.delete(key);
    for (const prefix of ranges) {
      const range = keysUnder(prefix);
      keys.push(...(await promisifyRequest(store.getAllKeys(range))).map(String));
      store.delete(range);
    }
    await promisifyRequest(store.transaction);
    return keys;
  });
}
