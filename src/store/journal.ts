import type { StoredRecord } from './records';

/*
 * What has been handed in and is not yet on the disk, in the browser's local storage. The database
 * makes a write last through a flat battery, but takes its time, and a page that is reloaded or
 * closed takes the writes under way with it. Local storage takes them down at once.
 */

const PREFIX = 'highedge journal ';

/** Each tab keeps its own journal, so that none wipes out that of another. */
const own = `${PREFIX}${Math.random().toString(36).slice(2)}`;

/** Takes down the records that are not known to be on the disk, in place of those before. */
export function takeDown(records: readonly StoredRecord[]): void {
  try {
    if (records.length === 0) localStorage.removeItem(own);
    else localStorage.setItem(own, JSON.stringify(records));
  } catch {
    // Full or refused: the database is what counts.
  }
}

/** Records that earlier pages had not brought to the disk. They stay taken down until `forget`. */
export function leftBehind(): readonly unknown[] {
  try {
    return journals().flatMap((name) => {
      const records: unknown = JSON.parse(localStorage.getItem(name) ?? '[]');
      return Array.isArray(records) ? records : [];
    });
  } catch {
    return [];
  }
}

/** Forgets what earlier pages had left behind. */
export function forgetLeftBehind(): void {
  try {
    for (const name of journals()) localStorage.removeItem(name);
  } catch {
    // It is found again next time, and written again to the same effect.
  }
}

function journals(): readonly string[] {
  return Object.keys(localStorage).filter((name) => name.startsWith(PREFIX) && name !== own);
}
