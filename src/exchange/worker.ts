/*
 * Writes and reads backups beside the screen.
 */

import { doJob, failure, type Job, type Message } from './jobs';

const tell = (message: Message) => self.postMessage(message);

self.onmessage = ({ data }: MessageEvent<Job>) => {
  doJob(data, (records) => tell({ kind: 'progress', records })).then(
    (result) => tell({ kind: 'done', result }),
    (error: unknown) => tell(failure(error)),
  );
};
