import { signal } from '@preact/signals';
import { takeUpShared } from '../store/shared-file';

/** What the app was opened with, until a screen has taken it. */
export interface Arrived {
  readonly file: File;
  /** How many files came along with it. */
  readonly others: number;
}

export const arrived = signal<Arrived | undefined>(undefined);

function arriveWith([file, ...others]: readonly File[]): boolean {
  if (file !== undefined) arrived.value = { file, others: others.length };
  return file !== undefined;
}

/** What the system hands over: see https://wicg.github.io/manifest-incubations/#launch-queue-and-launch-params */
interface LaunchParams {
  readonly files: readonly { getFile(): Promise<File> }[];
}

interface LaunchQueue {
  setConsumer(consumer: (params: LaunchParams) => void): void;
}

/** Takes files that the system opens the app with, where it can; `then` shows the screen for them. */
export function takeLaunchedFiles(then: () => void): void {
  const queue = (window as { launchQueue?: LaunchQueue }).launchQueue;
  queue?.setConsumer(({ files }) => {
    Promise.all(files.map((file) => file.getFile())).then((all) => {
      if (arriveWith(all)) then();
    }, console.error);
  });
}

/**
 * Takes files that are dropped anywhere but on a field for them: the browser would leave the app to
 * show them. `then` shows the screen for them.
 */
export function takeDroppedFiles(then: () => void): void {
  window.addEventListener('dragover', (event) => {
    if (event.dataTransfer?.types.includes('Files')) event.preventDefault();
  });
  window.addEventListener('drop', (event) => {
    const { defaultPrevented, dataTransfer } = event;
    if (defaultPrevented || !dataTransfer?.types.includes('Files')) return;
    event.preventDefault();
    if (arriveWith([...dataTransfer.files])) then();
  });
}

/** Takes what another app has shared with this one, where something was. */
export async function takeSharedFiles(): Promise<void> {
  arriveWith(await takeUpShared());
}
