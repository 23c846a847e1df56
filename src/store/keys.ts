import type { StoredRecord } from './records';

/** Key of a record. What belongs to a part sorts under its id, so that it is read in one range. */
export function keyOf(record: StoredRecord): string {
  switch (record.kind) {
    case 'part':
      return `part/${record.id}`;
    case 'inspection':
      return `${chainPrefix(record.part)}inspection/${record.id}`;
    case 'work':
      return `${chainPrefix(record.part)}work/${record.id}`;
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

/** Prefix of everything that happened to a part. */
export function chainPrefix(part: string): string {
  return `chain/${part}/`;
}

/** Prefix of the earlier states of all records whose keys begin with `of`. */
export function versionPrefix(of: string): string {
  return `version/${of}`;
}
