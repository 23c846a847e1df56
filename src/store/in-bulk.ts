import { promisifyRequest } from 'idb-keyval';
import { records } from './database';
import { keyOf, PART_PREFIX, SHOP_KEY, versionPrefix } from './keys';
import type { StoredRecord } from './records';

/** Beginnings of the keys of all that was entered, and of its earlier states. */
const ENTERED = [PART_PREFIX, 'chain/', SHOP_KEY, versionPrefix('')] as const;

/** Values read at a time: some hundred kilobytes. */
const AT_ONCE = 200;

/** Everything that was entered, with its earlier states, as it lies in the database: also what is damaged or newer. */
export async function* everythingEntered(): AsyncGenerator<readonly unknown[]> {
  for (const prefix of ENTERED) yield* under(prefix);
}

async function* under(prefix: string): AsyncGenerator<readonly unknown[]> {
  const end = `${prefix}\uffff`;
  let range: IDBKeyRange | undefined = IDBKeyRange.bound(prefix, end);
  while (range !== undefined) {
    const [keys, values] = await read(range);
    if (values.length > 0) yield values;
    const last = keys.at(-1);
    const isLast = last === undefined || keys.length < AT_ONCE;
    range = isLast ? undefined : IDBKeyRange.bound(last, end, true);
  }
}

function read(range: IDBKeyRange): Promise<[IDBValidKey[], unknown[]]> {
  return records('readonly', (store) =>
    Promise.all([
      promisifyRequest(store.getAllKeys(range, AT_ONCE)),
      promisifyRequest<unknown[]>(store.getAll(range, AT_ONCE)),
    ]),
  );
}

/** What lies under the key of a record, and the earlier states of it, as they are. */
export interface StoredLineage {
  readonly key: string;
  /** Undefined where there is none. */
  readonly current: unknown;
  readonly versions: readonly unknown[];
}

export interface Changes {
  readonly put: readonly StoredRecord[];
  /** Keys of what goes: what it held is put under another key. */
  readonly erase: readonly string[];
  /** What is to be known of it later, under a key that is no record's. */
  readonly noted?: readonly [key: string, value: unknown] | undefined;
}

/**
 * Changes records by what lies there already, in one transaction: nobody can write between the
 * reading and the writing.
 */
export function changeLineages(
  keys: readonly string[],
  change: (stored: readonly StoredLineage[]) => Changes,
): Promise<void> {
  return records('readwrite', async (store) => {
    const stored = await Promise.all(keys.map((key) => lineageAt(store, key)));
    const { put, erase, noted } = change(stored);
    for (const key of erase) store.delete(key);
    if (noted !== undefined) store.put(noted[1], noted[0]);
    for (const record of put) store.put(record, keyOf(record));
    return promisifyRequest(store.transaction);
  });
}

/** The same without changing anything. */
export function readLineages(keys: readonly string[]): Promise<readonly StoredLineage[]> {
  return records('readonly', (store) => Promise.all(keys.map((key) => lineageAt(store, key))));
}

async function lineageAt(store: IDBObjectStore, key: string): Promise<StoredLineage> {
  const prefix = `${versionPrefix(key)}/`;
  const [current, versions] = await Promise.all([
    promisifyRequest<unknown>(store.get(key)),
    promisifyRequest<unknown[]>(store.getAll(IDBKeyRange.bound(prefix, `${prefix}\uffff`))),
  ]);
  return { key, current, versions };
}
