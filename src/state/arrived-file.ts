import { signal } from '@preact/signals';

/** A file that the system has opened the app with, until a screen has taken it. */
export const arrivedFile = signal<File | undefined>(undefined);

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
  queue?.setConsumer(({ files: [first] }) => {
    if (first === undefined) return;
    first.getFile().then((file) => {
      arrivedFile.value = file;
      then();
    }, console.error);
  });
}
