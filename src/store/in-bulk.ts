import { promisifyRequest } from 'idb-keyval';
import { keysUnder, records } from './database';
import { keyOf, PART_PREFIX, SHOP_KEY, versionPrefix } from './keys';
import { lineagesAt, type StoredLineage } from './lineages-at';
import type { StoredRecord } from './records';

/** Beginnings of the keys of all that was entered, and of its earlier states. */
const ENTERED = [PART_PREFIX, 'chain/', SHOP_KEY, versionPrefix('')] as const;

/** Values read at a time: a megabyte or two. */
const AT_ONCE = 500;

/** Everything that was entered, with its earlier states, as it lies in the database: also what is damaged or newer. */
export async function* everythingEntered(): AsyncGenerator<readonly unknown[]> {
  for (const prefix of ENTERED) yield* under(prefix);
}

type Group = readonly [keys: IDBValidKey[], values: unknown[]];

/** While a group is worked on, the next one is being read. */
async function* under(prefix: string): AsyncGenerator<readonly unknown[]> {
  const whole = keysUnder(prefix);
  let next: Promise<Group> | undefined = read(whole);
  while (next !== undefined) {
    const [keys, values]: Group = await next;
    const last: IDBValidKey | undefined = keys.length < AT_ONCE ? undefined : keys.at(-1);
    next = last === undefined ? undefined : read(IDBKeyRange.bound(last, whole.upper, true));
    // What fails is told where it is waited for.
    next?.catch(() => {});
    if (values.length > 0) yield values;
  }
}

function read(range: IDBKeyRange): Promise<Group> {
  return records('readonly', (store) =>
    Promise.all([
      promisifyRequest(store.getAllKeys(range, AT_ONCE)),
      promisifyRequest<unknown[]>(store.getAll(range, AT_ONCE)),
    ]),
  );
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
    const { put, erase, noted } = change(await lineagesAt(store, keys));
    for (const key of erase) store.delete(key);
    if (noted !== undefined) store.put(noted[1], noted[0]);
    for (const record of put) store.put(record, keyOf(record));
    return promisifyRequest(store.transaction);
  });
}

/** The same without changing anything. */
export function readLineages(keys: readonly string[]): Promise<readonly StoredLineage[]> {
  return records('readonly', (store) => lineagesAt(store, keys));
}
