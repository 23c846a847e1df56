import type { Page } from '@playwright/test';

/** What lies in the app's database, by its key. */
export type Stored = Readonly<Record<string, unknown>>;

/** Puts values into the app's database, as another version of it or a fault might have done. */
export async function putStored(page: Page, values: Stored): Promise<void> {
  await page.evaluate(
    (all) =>
      new Promise<void>((resolve, reject) => {
        const request = indexedDB.open('highedge', 1);
        request.onerror = () => reject(request.error);
        // The app is in sight before it has a database.
        request.onupgradeneeded = () => request.result.createObjectStore('records');
        request.onsuccess = () => {
          const { result: database } = request;
          const transaction = database.transaction('records', 'readwrite');
          for (const [key, value] of Object.entries(all)) {
            transaction.objectStore('records').put(value, key);
          }
          transaction.oncomplete = () => {
            database.close();
            resolve();
          };
        };
      }),
    values,
  );
}

/** Everything in the app's database. */
export async function allStored(page: Page): Promise<Stored> {
  return page.evaluate(
    () =>
      new Promise<Stored>((resolve, reject) => {
        const request = indexedDB.open('highedge', 1);
        request.onerror = () => reject(request.error);
        request.onsuccess = () => {
          const { result: database } = request;
          const store = database.transaction('records').objectStore('records');
          const [keys, values] = [store.getAllKeys(), store.getAll()];
          values.onsuccess = () => {
            database.close();
            resolve(Object.fromEntries(keys.result.map((key, i) => [key, values.result[i]])));
          };
        };
      }),
  );
}
