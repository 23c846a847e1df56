import { get, promisifyRequest, setMany } from 'idb-keyval';
import { records } from './database';
import { chainPrefix, keyOf, PART_PREFIX } from './keys';
import type { InspectionRecord, PartRecord, ShopRecord, StoredRecord, WorkRecord } from './records';
import { upgrade } from './upgrades';

/** Records that could be read, and how many could not: those stay in the database untouched. */
export interface Loaded<R extends StoredRecord> {
  readonly records: readonly R[];
  readonly damaged: number;
  readonly newer: number;
}

/** Writes all of `changed` in one transaction: either all are kept or none. */
export function save(changed: readonly StoredRecord[]): Promise<void> {
  return setMany(
    changed.map((record) => [keyOf(record), record]),
    records,
  );
}

/** What holds for the whole shop, or undefined before the first change of it. */
export async function loadShop(): Promise<ShopRecord | undefined> {
  const upgraded = upgrade(await get('shop', records));
  return upgraded.ok && upgraded.record.kind === 'shop' ? upgraded.record : undefined;
}

/** All parts. */
export function loadParts(): Promise<Loaded<PartRecord>> {
  return loadRange<PartRecord>(PART_PREFIX);
}

/** Everything that happened to one part. */
export function loadChain(part: string): Promise<Loaded<InspectionRecord | WorkRecord>> {
  return loadRange<InspectionRecord | WorkRecord>(chainPrefix(part));
}

async function loadRange<R extends StoredRecord>(prefix: string): Promise<Loaded<R>> {
  const range = IDBKeyRange.bound(prefix, `${prefix}\uffff`);
  const stored = await records('readonly', (store) =>
    promisifyRequest<unknown[]>(store.getAll(range)),
  );
  const upgraded = stored.map((value) => upgrade(value));
  return {
    records: upgraded.flatMap((result) => (result.ok ? [result.record as R] : [])),
    damaged: upgraded.filter((result) => !result.ok && result.reason === 'damaged').length,
    newer: upgraded.filter((result) => !result.ok && result.reason === 'newer').length,
  };
}
