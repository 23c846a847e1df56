import { readFileSync } from 'node:fs';
import { gzipSync } from 'node:zlib';
import { endLine, headLine } from '../../../src/exchange/backup/format';
import type { StoredRecord } from '../../../src/store/records';
import { upgrade } from '../../../src/store/upgrades';
import type { Stored } from '../../browser/database';

/** A shop of the first format, by its keys. */
export const SAMPLE: Stored = JSON.parse(
  readFileSync(new URL('../../store/samples/format-1.json', import.meta.url), 'utf8'),
);

/** Copies of its parts in the backup: records for several transactions. */
const COPIES = 150;

/**
 * A backup of another device: the sample's parts with their chains over and over, each time under
 * other ids, and the parts of the sample itself as they were changed there since.
 */
export function backupOfManyParts(): Buffer {
  const records = Object.values(SAMPLE).flatMap((value) => {
    const upgraded = upgrade(value);
    return upgraded.ok && upgraded.record.kind !== 'shop' ? [upgraded.record] : [];
  });
  const ids = records.flatMap((record) => ('id' in record ? [record.id] : []));
  const text = records.map((record) => JSON.stringify(record)).join(',\n');
  const copies = Array.from({ length: COPIES }, (_, copy) =>
    ids.reduce((all, id) => all.replaceAll(id, `${id}-${copy}`), text),
  );
  const changed = records.flatMap(changedElsewhere).map((record) => JSON.stringify(record));
  const head = headLine({ made: '2099-03-05T14:07:00.000Z', app: '0.1.0' });
  const count = COPIES * records.length + changed.length;
  return gzipSync(`${head}${[...copies, ...changed].join(',\n')}\n${endLine(count)}`);
}

function changedElsewhere(record: StoredRecord): readonly StoredRecord[] {
  if (record.kind !== 'part') return [];
  const entry = { ...record.entry, name: `${record.entry.name}, changed elsewhere` };
  return [{ ...record, entry, changed: '2099-01-01T00:00:00.000Z' }];
}
