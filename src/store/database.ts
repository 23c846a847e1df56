import type { UseStore } from 'idb-keyval';
import { refusalOf, StorageError } from './storage-error';

const DATABASE = 'highedge';
const OBJECTS = 'records';

let opening: Promise<IDBDatabase> | undefined;

function open(): Promise<IDBDatabase> {
  if (opening !== undefined) return opening;
  const own = new Promise<IDBDatabase>((resolve, reject) => {
    const request = indexedDB.open(DATABASE, 1);
    let isGivenUp = false;
    const giveUp = (error: StorageError) => {
      isGivenUp = true;
      reject(error);
    };
    request.onupgradeneeded = () => request.result.createObjectStore(OBJECTS);
    request.onblocked = () =>
      giveUp(new StorageError('blocked', 'Another window holds an older version open'));
    request.onerror = () => {
      const { error } = request;
      giveUp(new StorageError(refusalOf(error), 'The database will not open', { cause: error }));
    };
    request.onsuccess = () => {
      const database = request.result;
      // It has been asked for again since: a second connection would only stand in the way.
      if (isGivenUp) return database.close();
      // A newer version in another tab must be able to upgrade; a closed connection is opened again.
      database.onversionchange = () => database.close();
      database.onclose = () => forget(own);
      resolve(database);
    };
  });
  opening = own;
  own.catch(() => forget(own));
  return own;
}

/** Word of a connection that is dead may come when another one has been opened already: that one stays. */
function forget(one: Promise<IDBDatabase> | undefined): void {
  if (opening === one) opening = undefined;
}

/** All keys that begin with `prefix`. */
export function keysUnder(prefix: string): IDBKeyRange {
  return IDBKeyRange.bound(prefix, `${prefix}\uffff`);
}

/**
 * The app's one object store, for idb-keyval. 'strict' makes a write last through a flat battery:
 * it counts as done only when it is on the disk. A connection that died while the phone slept is
 * opened again, once.
 */
export const records: UseStore = async (mode, callback) => {
  let asked: Promise<IDBDatabase> | undefined;
  const begin = async () => {
    asked = open();
    const database = await asked;
    return database.transaction(OBJECTS, mode, { durability: 'strict' }).objectStore(OBJECTS);
  };
  let store: IDBObjectStore;
  try {
    store = await begin();
  } catch (error) {
    if (!(error instanceof DOMException && error.name === 'InvalidStateError')) throw error;
    forget(asked);
    store = await begin();
  }
  return callback(store);
};
