/*
 * The journal in files of the browser's own for this app. What local storage takes down is some
 * seconds late on the disk, and lost where the whole browser is killed; these files are not. They are
 * written by a worker, so that no keystroke waits for them.
 */

const FOLDER = 'journal';

/** What the worker is told: all that the journal `name` is to hold now. */
export interface JournalText {
  readonly folder: string;
  readonly name: string;
  readonly text: string;
}

let worker: Worker | undefined;
let isRefused = typeof Worker === 'undefined';

/** Puts `text` in place of what the journal held. Where the browser has no such files nothing is done. */
export function writeJournal(name: string, text: string): void {
  worker ??= isRefused ? undefined : start();
  const journal: JournalText = { folder: FOLDER, name, text };
  worker?.postMessage(journal);
}

function start(): Worker | undefined {
  try {
    const started = new Worker(new URL('./journal-worker.ts', import.meta.url), { type: 'module' });
    started.onerror = () => {
      isRefused = true;
      worker = undefined;
    };
    return started;
  } catch {
    isRefused = true;
    return undefined;
  }
}

/** A journal's name and one text of it, whole or not. */
export type FoundText = readonly [name: string, text: string];

/** The texts of all journals but `own`; of each the last one and the one before. */
export async function journalTexts(own: string): Promise<readonly FoundText[]> {
  const found: FoundText[] = [];
  for await (const file of filesBut(own)) {
    found.push([nameOf(file), await (await file.getFile()).text()]);
  }
  return found;
}

/** Removes all journals but `own`. Those of windows that are open stay: they hold them. */
export async function removeJournals(own: string): Promise<void> {
  const folder = await openFolder();
  for await (const file of filesBut(own)) await folder?.removeEntry(file.name).catch(() => {});
}

async function* filesBut(own: string): AsyncGenerator<FileSystemFileHandle> {
  const folder = await openFolder();
  if (folder === undefined) return;
  for await (const entry of folder.values()) {
    if (entry.kind === 'file' && nameOf(entry) !== own) yield entry;
  }
}

/** Undefined where the browser has no such files, as in some private windows. */
async function openFolder(): Promise<FileSystemDirectoryHandle | undefined> {
  try {
    const root = await navigator.storage.getDirectory();
    return await root.getDirectoryHandle(FOLDER, { create: true });
  } catch {
    return undefined;
  }
}

/** Name of the journal that a file belongs to: its own without the turn at the end. */
function nameOf({ name }: FileSystemHandle): string {
  return name.slice(0, -2);
}
