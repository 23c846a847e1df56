import type { StoredRecord } from './records';

/*
 * What has been handed in and is not yet on the disk, in the browser's local storage. The database
 * makes a write last through a flat battery, but takes its time, and a page that is reloaded or
 * closed takes the writes under way with it. Local storage takes them down at once.
 */

/** A record that waits to be written, and when the stored state that it was made from was changed. */
export interface Unwritten {
  readonly record: StoredRecord;
  /** Undefined where there was none. */
  readonly from?: string | undefined;
}

const PREFIX = 'highedge journal ';

/** Each tab keeps its own journal, so that none wipes out that of another. */
const own = `${PREFIX}${Math.random().toString(36).slice(2)}`;

/** Takes down what is not known to be on the disk, in place of what was before. */
export function takeDown(unwritten: readonly Unwritten[]): void {
  try {
    if (unwritten.length === 0) localStorage.removeItem(own);
    else localStorage.setItem(own, JSON.stringify(unwritten));
  } catch {
    // Full or refused: the database is what counts.
  }
}

/** What earlier pages had not brought to the disk, as it was read. It stays taken down until `forget`. */
export function leftBehind(): readonly unknown[] {
  return journals().flatMap(read);
}

function read(name: string): readonly unknown[] {
  try {
    const unwritten: unknown = JSON.parse(localStorage.getItem(name) ?? '[]');
    return Array.isArray(unwritten) ? unwritten : [];
  } catch {
    return [];
  }
}

/** Forgets what earlier pages had left behind. */
export function forgetLeftBehind(): void {
  for (const name of journals()) localStorage.removeItem(name);
}

function journals(): readonly string[] {
  try {
    return Object.keys(localStorage).filter((name) => name.startsWith(PREFIX) && name !== own);
  } catch {
    // Refused: then nothing has been taken down either.
    return [];
  }
}
