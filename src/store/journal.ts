import { journalTexts, removeJournals, writeJournal } from './journal-file';
import type { StoredRecord } from './records';

/*
 * What has been handed in and is not yet in the database. That makes a write last through a flat
 * battery, but takes its time, and what ends meanwhile takes the writes under way with it. So it is
 * taken down in two more places: local storage has it when the page is closed or reloaded in the same
 * moment, and files of the browser's own have it when the whole browser is killed.
 */

/** A record that waits to be written, and when the stored state that it was made from was changed. */
export interface Unwritten {
  readonly record: StoredRecord;
  /** Undefined where there was none. */
  readonly from?: string | undefined;
}

/** What a window had taken down. */
interface Journal {
  /** How often it had taken down something: of two texts of one journal it tells the later. */
  readonly count: number;
  readonly unwritten: readonly unknown[];
}

const PREFIX = 'highedge journal ';

/** Each window keeps its own journal, so that none wipes out that of another. */
const own = `${PREFIX}${Math.random().toString(36).slice(2)}`;

let count = 0;

/** Takes down what is not known to be on the disk, in place of what was before. */
export function takeDown(unwritten: readonly Unwritten[]): void {
  count += 1;
  const journal: Journal = { count, unwritten };
  const text = JSON.stringify(journal);
  try {
    if (unwritten.length === 0) localStorage.removeItem(own);
    else localStorage.setItem(own, text);
  } catch {
    // Full or refused: the file and the database are there too.
  }
  writeJournal(own, text);
}

/** What earlier windows had not brought to the disk. */
export interface LeftBehind {
  /** As it was read. */
  readonly unwritten: readonly unknown[];
  /** Until then it stays taken down. What a window that is still open has taken down since stays for good. */
  forget(): Promise<void>;
}

export async function leftBehind(): Promise<LeftBehind> {
  const local = localTexts();
  const texts = [...local, ...(await journalTexts(own))];
  const latest = new Map<string, Journal>();
  for (const [name, text] of texts) {
    const journal = read(text);
    if (journal !== undefined && journal.count >= (latest.get(name)?.count ?? 0)) {
      latest.set(name, journal);
    }
  }
  return {
    unwritten: [...latest.values()].flatMap(({ unwritten }) => unwritten),
    forget: async () => {
      for (const [name, text] of local) {
        if (localStorage.getItem(name) === text) localStorage.removeItem(name);
      }
      await removeJournals(own);
    },
  };
}

/** None where the text was not written to its end. */
function read(text: string): Journal | undefined {
  try {
    const journal: unknown = JSON.parse(text);
    // The first version took down a list of records.
    if (Array.isArray(journal)) return { count: 0, unwritten: journal };
    const { count, unwritten } = journal as Journal;
    return Array.isArray(unwritten) && typeof count === 'number' ? { count, unwritten } : undefined;
  } catch {
    return undefined;
  }
}

function localTexts(): readonly (readonly [name: string, text: string])[] {
  try {
    return Object.keys(localStorage)
      .filter((name) => name.startsWith(PREFIX) && name !== own)
      .map((name) => [name, localStorage.getItem(name) ?? '']);
  } catch {
    // Refused: then nothing has been taken down there either.
    return [];
  }
}
