import type { JournalText } from './journal-file';

/*
 * Writes a window's journal into files of its own, at once: a write into such a file is with the
 * operating system when it returns, and no end of the browser can take it back.
 */

/** A file that a worker alone may open, as the File System standard has it. */
interface WorkersFile {
  write(bytes: Uint8Array, options: { at: number }): number;
  truncate(length: number): void;
}

interface OpensForWorkers {
  createSyncAccessHandle(): Promise<WorkersFile>;
}

/** Two files by turns: while one is written, the other holds what was before. */
const TURNS = ['0', '1'] as const;

let files: Promise<readonly WorkersFile[]> | undefined;
let turn = 0;

self.onmessage = ({ data }: MessageEvent<JournalText>) => {
  files ??= open(data);
  files.then(
    (opened) => write(opened, data.text),
    () => {
      // Refused here: the journal in the local storage has to do.
    },
  );
};

async function open({ folder, name }: JournalText): Promise<readonly WorkersFile[]> {
  const root = await navigator.storage.getDirectory();
  const journals = await root.getDirectoryHandle(folder, { create: true });
  return Promise.all(
    TURNS.map(async (which) => {
      const file = await journals.getFileHandle(`${name} ${which}`, { create: true });
      return (file as unknown as OpensForWorkers).createSyncAccessHandle();
    }),
  );
}

function write(opened: readonly WorkersFile[], text: string): void {
  const file = opened[turn % TURNS.length];
  turn += 1;
  const bytes = new TextEncoder().encode(text);
  file?.write(bytes, { at: 0 });
  file?.truncate(bytes.length);
}
