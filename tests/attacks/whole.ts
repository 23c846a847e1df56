import { keyOf } from '../../src/store/keys';
import type { StoredRecord } from '../../src/store/records';
import { isSame } from '../../src/store/three-way';
import { readStored } from '../../src/store/whole/read-stored';
import type { Stored } from '../browser/database';

/** What a person entered, without what is worked out from it and what an import keeps beside it. */
function entered(all: Stored): Stored {
  return Object.fromEntries(
    Object.entries(all).filter(([key]) => /^(part|chain|shop|version)\b/.test(key)),
  );
}

/** Throws where a record is damaged. */
export function expectWhole(all: Stored): void {
  for (const [key, value] of Object.entries(entered(all))) {
    const upgraded = readStored(value);
    if (!upgraded.ok || keyOf(upgraded.record) !== key) throw new Error(`${key} is damaged`);
  }
}

/** Throws where a record lacks what it belongs to. */
export function expectOwned(all: Stored): void {
  for (const [key, value] of Object.entries(entered(all))) {
    const upgraded = readStored(value);
    const owner = upgraded.ok ? ownerOf(upgraded.record) : undefined;
    if (owner !== undefined && !(owner in all)) throw new Error(`${key} has lost ${owner}`);
  }
}

/** Throws where anything of `before` is gone, or stands in a state that neither it nor `later` knows. */
export function expectKept(before: Stored, after: Stored, later: Stored): void {
  for (const [key, value] of Object.entries(entered(before))) {
    const isKept = isSame(after[key], value) || (key in later && isSame(after[key], later[key]));
    if (!isKept) throw new Error(`${key} is not as it was`);
  }
}

/** Throws where what was entered differs. */
export function expectSame(found: Stored, wanted: Stored): void {
  const [one, other] = [entered(found), entered(wanted)];
  for (const key of new Set([...Object.keys(one), ...Object.keys(other)])) {
    if (!isSame(one[key], other[key])) throw new Error(`${key} is not as it should have become`);
  }
}

/** The key of what a record is worth nothing without. */
function ownerOf(record: StoredRecord): string | undefined {
  if (record.kind === 'inspection') return `part/${record.part}`;
  if (record.kind === 'version') return record.of;
  return record.kind === 'work' ? `chain/${record.part}/inspection/${record.after}` : undefined;
}
