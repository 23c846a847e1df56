import { keyOf, partsOfKey } from '../store/keys';
import type { StoredRecord } from '../store/records';

/*
 * What this page and the disk last had in common. Another window may write the same records: what it
 * changed can only be told from what this page changed by what both began from.
 */

const agreed = new Map<string, StoredRecord>();

/** The state of the record at `key` that the page's own state of it was made from. */
export function agreedOn(key: string): StoredRecord | undefined {
  return agreed.get(key);
}

/** The page holds the record as it lies on the disk, or something made from that. */
export function agreeOn(record: StoredRecord): void {
  agreed.set(keyOf(record), record);
}

/** The page holds these no more. */
export function letGo(records: readonly StoredRecord[]): void {
  for (const record of records) agreed.delete(keyOf(record));
}

/** All that the page has read or written of the part that a record is of, as it agreed on it. */
export function agreedBeside(record: StoredRecord): readonly StoredRecord[] {
  const partOf = (one: StoredRecord) => partsOfKey(keyOf(one)).part;
  const part = partOf(record);
  return part === undefined ? [] : [...agreed.values()].filter((one) => partOf(one) === part);
}

/** Keys of all that the page has read or written. */
export function agreedKeys(): readonly string[] {
  return [...agreed.keys()];
}

type Taker = (records: readonly StoredRecord[]) => void;
type Leaver = (keys: ReadonlySet<string>) => void;

const takers: Taker[] = [];
const leavers: Leaver[] = [];

/** `take` is given what other windows have made of records, to be held in place of what was. */
export function onArrival(take: Taker): void {
  takers.push(take);
}

/** Records as they now lie on the disk, of which the page holds no newer state. */
export function arrive(records: readonly StoredRecord[]): void {
  if (records.length === 0) return;
  for (const record of records) agreeOn(record);
  for (const take of takers) take(records);
}

/** `leave` is given the keys of what other windows have erased, to be held no more. */
export function onDeparture(leave: Leaver): void {
  leavers.push(leave);
}

/** Nothing lies at the keys any more, and the page holds no newer state of it. */
export function depart(keys: readonly string[]): void {
  if (keys.length === 0) return;
  const gone = new Set(keys);
  for (const key of gone) agreed.delete(key);
  for (const leave of leavers) leave(gone);
}
