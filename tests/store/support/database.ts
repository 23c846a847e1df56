import 'fake-indexeddb/auto';
import { promisifyRequest } from 'idb-keyval';
import { records } from '../../../src/store/database';

/** Empties the app's database, through its own connection. */
export function emptyDatabase(): Promise<void> {
  return records('readwrite', (store) => promisifyRequest(store.clear()));
}

/** Puts any value under `key`, as another version of the app or a fault might have done. */
export async function putAnything(key: string, value: unknown): Promise<void> {
  await records('readwrite', (store) => promisifyRequest(store.put(value, key)));
}

/** The value under `key`, as it lies in the database. */
export function storedAt(key: string): Promise<unknown> {
  return records('readonly', (store) => promisifyRequest<unknown>(store.get(key)));
}

/** All keys that there are, in their order. */
export function storedKeys(): Promise<IDBValidKey[]> {
  return records('readonly', (store) => promisifyRequest(store.getAllKeys()));
}

/** The connection that the app has open. */
export function connection(): Promise<IDBDatabase> {
  return records('readonly', (store) => Promise.resolve(store.transaction.db));
}
