import { ENDING } from '../exchange/backup/format';
import { writeBackup } from '../exchange/backup/write-backup';
import { keyOf } from '../store/keys';
import type { StoredRecord } from '../store/records';
import { unsaved } from './saving';
import { now, parts } from './shop';

/** All that is not on the disk, with the parts that it belongs to, as a backup: it needs no database. */
export async function unsavedFile(): Promise<File> {
  const entered = unsaved().filter(({ kind }) => kind !== 'summary');
  const records = new Map(entered.flatMap(withPart).map((record) => [keyOf(record), record]));
  const made = now();
  const file = await writeBackup({ made, app: __APP_VERSION__ }, inOneGroup([...records.values()]));
  const name = `highedge not saved ${made.slice(0, 16).replace('T', ' ').replace(':', '-')}`;
  return new File([file], `${name}${ENDING}`, { type: 'application/gzip' });
}

async function* inOneGroup(records: readonly StoredRecord[]) {
  yield records;
}

function withPart(record: StoredRecord): readonly StoredRecord[] {
  const part = 'part' in record ? parts.value.get(record.part) : undefined;
  return part === undefined ? [record] : [part, record];
}
