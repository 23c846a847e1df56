import type { Unwritten } from './journal';
import { keyOf } from './keys';
import type { EnteredRecord, StoredRecord } from './records';
import { readAt } from './shop-store';
import { isSame } from './three-way';
import { readStored } from './whole/read-stored';
import { earlierState, write } from './write';

const WHY = 'it had not been stored when its window was closed';

/**
 * Brings to the disk what a page that is no more had not, as it had taken it down. What has been
 * changed since stays as it is: the state that was taken down is then kept as an earlier one.
 *
 * @returns the keys of what was written.
 */
export async function bringBack(taken: readonly unknown[]): Promise<readonly string[]> {
  const unwritten = taken.flatMap(readOne);
  if (unwritten.length === 0) return [];
  const stored = await readAt(unwritten.map(({ record }) => keyOf(record)));
  const there = new Map(stored.map((record) => [keyOf(record), record]));
  const records = unwritten.flatMap(({ record }) => inPlaceOf(there.get(keyOf(record)), record));
  const from = new Map(unwritten.map(({ record, from }) => [keyOf(record), from]));
  await write(records, (key) => {
    const now = there.get(key);
    return now?.changed === from.get(key) ? now : undefined;
  });
  return records.map(keyOf);
}

function inPlaceOf(there: StoredRecord | undefined, record: StoredRecord): readonly StoredRecord[] {
  if (there === undefined || there.changed <= record.changed) return [record];
  if (isSame(there, record) || record.kind === 'version' || record.kind === 'summary') return [];
  return [earlierState(record, there as EnteredRecord, WHY)];
}

function readOne(taken: unknown): readonly Unwritten[] {
  if (typeof taken !== 'object' || taken === null) return [];
  const { record, from } = taken as { record?: unknown; from?: unknown };
  // The first version took down records alone.
  const upgraded = readStored(record ?? taken);
  if (!upgraded.ok) return [];
  return [{ record: upgraded.record, from: typeof from === 'string' ? from : undefined }];
}
