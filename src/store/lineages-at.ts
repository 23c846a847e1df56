import { promisifyRequest } from 'idb-keyval';
import { versionPrefix } from './keys';

/** What lies under the key of a record, and the earlier states of it, as they are. */
export interface StoredLineage {
  readonly key: string;
  /** Undefined where there is none. */
  readonly current: unknown;
  readonly versions: readonly unknown[];
}

/**
 * What lies at `keys`, in their order. A file has its records in the order of their keys, so all of a group
 * mostly come, with their earlier states, by a range each: a request for every record took longer
 * than all that is done with it.
 */
export async function lineagesAt(
  store: IDBObjectStore,
  keys: readonly string[],
): Promise<readonly StoredLineage[]> {
  const prefixes = keys.map((key) => `${versionPrefix(key)}/`);
  const [current, earlier] = await Promise.all([
    under(store, keys, ''),
    under(store, prefixes, '\uffff'),
  ]);
  const versions = new Map<string, unknown[]>(prefixes.map((prefix) => [prefix, []]));
  for (const [key, value] of earlier) versions.get(prefixIn(versions, key))?.push(value);
  return keys.map((key, index) => ({
    key,
    current: current.get(key),
    versions: versions.get(prefixes[index] ?? '') ?? [],
  }));
}

/** All that lies under keys that begin with one of `beginnings` and end at the latest with `end`; it may hold others that lie between. */
async function under(
  store: IDBObjectStore,
  beginnings: readonly string[],
  end: string,
): Promise<ReadonlyMap<string, unknown>> {
  const [first, ...others] = [...beginnings].sort();
  if (first === undefined) return new Map();
  const most = 2 * beginnings.length + 1;
  const whole = IDBKeyRange.bound(first, `${others.at(-1) ?? first}${end}`);
  const keys = await promisifyRequest(store.getAllKeys(whole, most));
  if (keys.length === 0) return new Map();
  // Where much else lies between them, each is asked for by itself.
  const ranges =
    keys.length < most
      ? [whole]
      : beginnings.map((beginning) => IDBKeyRange.bound(beginning, `${beginning}${end}`));
  const found = await Promise.all(ranges.map((range) => entriesIn(store, range)));
  return new Map(found.flat());
}

async function entriesIn(
  store: IDBObjectStore,
  range: IDBKeyRange,
): Promise<readonly (readonly [string, unknown])[]> {
  const [keys, values] = await Promise.all([
    promisifyRequest(store.getAllKeys(range)),
    promisifyRequest<unknown[]>(store.getAll(range)),
  ]);
  return keys.map((key, index) => [String(key), values[index]]);
}

/** The beginning of `key` that is one of `prefixes`, each of which ends with a slash. */
function prefixIn(prefixes: ReadonlyMap<string, unknown>, key: string): string {
  let end = key.length;
  do {
    end = key.lastIndexOf('/', end - 1);
  } while (end > 0 && !prefixes.has(key.slice(0, end + 1)));
  return key.slice(0, end + 1);
}
