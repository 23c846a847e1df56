import type { StoredRecord } from './records';

/** Key of a record. What belongs to a part sorts under its id, so that it is read in one range. */
export function keyOf(record: StoredRecord): string {
  switch (record.kind) {
    case 'part':
      return `part/${record.id}`;
    case 'inspection':
      return `${chainPrefix(record.part)}inspection/${record.id}`;
    case 'work':
      return workKey(record.part, record.id);
    case 'shop':
      return SHOP_KEY;
    case 'version':
      return `${versionPrefix(record.of)}/${record.id}`;
    case 'summary':
      return `${SUMMARY_PREFIX}${record.part}`;
  }
}

export const PART_PREFIX = 'part/';
export const SUMMARY_PREFIX = 'summary/';
export const SHOP_KEY = 'shop';

/** Where it lies what the inspections of a part have found of comparators and rates. */
export function foundKey(part: string): string {
  return `found/${part}`;
}

/** Prefix of everything that happened to a part. */
export function chainPrefix(part: string): string {
  return `chain/${part}/`;
}

export function workKey(part: string, id: string): string {
  return `${chainPrefix(part)}work/${id}`;
}

/** Prefix of the earlier states of all records whose keys begin with `of`. */
export function versionPrefix(of: string): string {
  return `version/${of}`;
}

/** What a key tells of the record that lies there. */
export interface KeyParts {
  readonly kind: 'part' | 'inspection' | 'work' | 'version' | 'shop' | 'other';
  /** Id of the part that it is, or belongs to. */
  readonly part?: string;
}

/** What can be told of a record that cannot be read. */
export function partsOfKey(key: string): KeyParts {
  const [first, second, third] = key.split('/');
  if (first === 'version') {
    const { part } = partsOfKey(key.slice(versionPrefix('').length));
    return { kind: 'version', ...(part !== undefined && { part }) };
  }
  if (first === SHOP_KEY) return { kind: 'shop' };
  if (second === undefined) return { kind: 'other' };
  if (first === 'part') return { kind: 'part', part: second };
  if (first !== 'chain') return { kind: 'other' };
  const kind = third === 'inspection' || third === 'work' ? third : 'other';
  return { kind, part: second };
}
