import { get, promisifyRequest } from 'idb-keyval';
import { records } from './database';
import { chainPrefix, keyOf, PART_PREFIX, SHOP_KEY, SUMMARY_PREFIX, versionPrefix } from './keys';
import type {
  InspectionRecord,
  PartRecord,
  ShopRecord,
  StoredRecord,
  SummaryRecord,
  VersionRecord,
  WorkRecord,
} from './records';
import { upgrade } from './upgrades';

/** Records that could be read, and how many could not: those stay in the database untouched. */
export interface Loaded<R extends StoredRecord> {
  readonly records: readonly R[];
  readonly damaged: number;
  readonly newer: number;
}

/** Writes all of `changed` in one transaction: either all are kept or none. */
export function save(changed: readonly StoredRecord[]): Promise<void> {
  return records('readwrite', (store) => {
    try {
      for (const record of changed) store.put(record, keyOf(record));
    } catch (error) {
      // A record that cannot be stored must not leave the ones before it behind.
      store.transaction.abort();
      throw error;
    }
    return promisifyRequest(store.transaction);
  });
}

/** What holds for the whole shop: no record before the first change of it. */
export async function loadShop(): Promise<Loaded<ShopRecord>> {
  const stored = await get<unknown>(SHOP_KEY, records);
  return sorted<ShopRecord>(stored === undefined ? [] : [stored]);
}

/** All parts. */
export function loadParts(): Promise<Loaded<PartRecord>> {
  return loadRange<PartRecord>(PART_PREFIX);
}

/** Everything that happened to one part. */
export function loadChain(part: string): Promise<Loaded<InspectionRecord | WorkRecord>> {
  return loadRange<InspectionRecord | WorkRecord>(chainPrefix(part));
}

/** The earlier states of what happened to one part. */
export function loadVersions(part: string): Promise<Loaded<VersionRecord>> {
  return loadRange<VersionRecord>(versionPrefix(chainPrefix(part)));
}

/** Where the parts stand, as far as it has been worked out. */
export function loadSummaries(): Promise<Loaded<SummaryRecord>> {
  return loadRange<SummaryRecord>(SUMMARY_PREFIX);
}

async function loadRange<R extends StoredRecord>(prefix: string): Promise<Loaded<R>> {
  const range = IDBKeyRange.bound(prefix, `${prefix}\uffff`);
  const stored = await records('readonly', (store) =>
    promisifyRequest<unknown[]>(store.getAll(range)),
  );
  return sorted<R>(stored);
}

/** Stored values as records of today's format, and how many of them are none. */
function sorted<R extends StoredRecord>(stored: readonly unknown[]): Loaded<R> {
  const upgraded = stored.map((value) => upgrade(value));
  return {
    records: upgraded.flatMap((result) => (result.ok ? [result.record as R] : [])),
    damaged: upgraded.filter((result) => !result.ok && result.reason === 'damaged').length,
    newer: upgraded.filter((result) => !result.ok && result.reason === 'newer').length,
  };
}
