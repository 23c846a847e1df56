import { everythingEntered } from '../../store/in-bulk';
import type { BackupHead } from './format';
import { writeBackup } from './write-backup';

/** Everything that was entered, as a backup file. */
export function backUp(head: BackupHead, progress: (records: number) => void): Promise<Blob> {
  return writeBackup(head, told(everythingEntered(), progress));
}

async function* told(
  groups: AsyncIterable<readonly unknown[]>,
  progress: (records: number) => void,
): AsyncGenerator<readonly unknown[]> {
  let count = 0;
  for await (const group of groups) {
    yield group;
    count += group.length;
    progress(count);
  }
}
