import { get, getMany, promisifyRequest } from 'idb-keyval';
import { keysUnder, records } from './database';
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
import type { Upgraded } from './upgrades';
import { readStored } from './whole/read-stored';

/** Records that could be read, and what could not: that stays in the database untouched. */
export interface Loaded<R extends StoredRecord> {
  readonly records: readonly R[];
  readonly unread: readonly Unread[];
}

/** Something stored that this version cannot read. */
export interface Unread {
  readonly key: string;
  readonly reason: 'damaged' | 'newer';
  /** The name that was typed for it, as far as it can be made out. */
  readonly name?: string;
}

/** Values read at a time: those of a large shop, read at once, would keep the page from answering. */
const AT_ONCE = 300;

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
  return sorted<ShopRecord>(stored === undefined ? [] : [[SHOP_KEY, stored]]);
}

/** The records that lie at `keys`, as far as they can be read. */
export async function readAt(keys: readonly string[]): Promise<readonly StoredRecord[]> {
  return (await lookAt(keys)).records;
}

/** The same, and the keys under which nothing lies: it was erased, or never written. */
export async function lookAt(
  keys: readonly string[],
): Promise<{ readonly records: readonly StoredRecord[]; readonly nothing: readonly string[] }> {
  const all: StoredRecord[] = [];
  const nothing: string[] = [];
  for (let from = 0; from < keys.length; from += AT_ONCE) {
    const some = keys.slice(from, from + AT_ONCE);
    const stored = await getMany<unknown>([...some], records);
    const found = some.map((key, index) => [key, stored[index]] as const);
    all.push(...sorted(found.filter(([, value]) => value !== undefined)).records);
    nothing.push(...found.flatMap(([key, value]) => (value === undefined ? [key] : [])));
  }
  return { records: all, nothing };
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
  const whole = keysUnder(prefix);
  const all: Loaded<R>[] = [];
  let range: IDBKeyRange | undefined = whole;
  while (range !== undefined) {
    const [keys, values] = await read(range);
    all.push(sorted<R>(values.map((value, index) => [String(keys[index]), value])));
    const last = keys.length < AT_ONCE ? undefined : keys.at(-1);
    range = last === undefined ? undefined : IDBKeyRange.bound(last, whole.upper, true);
  }
  return {
    records: all.flatMap(({ records }) => records),
    unread: all.flatMap(({ unread }) => unread),
  };
}

function read(range: IDBKeyRange): Promise<[IDBValidKey[], unknown[]]> {
  return records('readonly', (store) =>
    Promise.all([
      promisifyRequest(store.getAllKeys(range, AT_ONCE)),
      promisifyRequest<unknown[]>(store.getAll(range, AT_ONCE)),
    ]),
  );
}

/** Stored values as records of today's format, and what is none. */
function sorted<R extends StoredRecord>(
  stored: readonly (readonly [key: string, value: unknown])[],
): Loaded<R> {
  const upgraded = stored.map(([key, value]) => ({ key, value, result: resultAt(key, value) }));
  return {
    records: upgraded.flatMap(({ result }) => (result.ok ? [result.record as R] : [])),
    unread: upgraded.flatMap(({ key, value, result }) =>
      result.ok ? [] : [{ key, reason: result.reason, ...nameIn(value) }],
    ),
  };
}

/** A record that does not lie where it belongs is none: another one would be written in its place. */
function resultAt(key: string, value: unknown): Upgraded {
  const result = readStored(value);
  return result.ok && keyOf(result.record) !== key ? { ok: false, reason: 'damaged' } : result;
}

function nameIn(value: unknown): { readonly name?: string } {
  const name = (value as { entry?: { name?: unknown } } | null | undefined)?.entry?.name;
  return typeof name === 'string' ? { name } : {};
}
