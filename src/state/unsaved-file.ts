import { keyOf } from '../store/keys';
import type { StoredRecord } from '../store/records';
import { unsaved } from './saving';
import { now, parts } from './shop';

/** All that is not on the disk, with the parts that it belongs to, as a file: it needs no database. */
export function unsavedFile(): { readonly name: string; readonly text: string } {
  const records = new Map(
    unsaved()
      .flatMap(withPart)
      .map((record) => [keyOf(record), record]),
  );
  const made = now();
  return {
    name: `highedge not saved ${made.replaceAll(':', '-')}.json`,
    text: JSON.stringify({ made, records: [...records.values()] }, undefined, 2),
  };
}

function withPart(record: StoredRecord): readonly StoredRecord[] {
  const part = 'part' in record ? parts.value.get(record.part) : undefined;
  return part === undefined ? [record] : [part, record];
}
