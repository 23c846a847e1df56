import { keyOf } from '../../store/keys';
import type { KeptRecord } from '../shape/records';
import { type Lineage, unite } from './unite';

/** Records and versions gathered by the key of the record that they are states of. */
export function lineagesOf(records: readonly KeptRecord[]): ReadonlyMap<string, Lineage> {
  const gathered = new Map<string, Lineage>();
  for (const record of records) {
    const [key, lineage] =
      record.kind === 'version'
        ? [record.of, { versions: [record] }]
        : [keyOf(record), { current: record, versions: [] }];
    gathered.set(key, unite(gathered.get(key) ?? { versions: [] }, lineage));
  }
  return gathered;
}

/** All records of a lineage by their keys. */
export function recordsOf({ current, versions }: Lineage): ReadonlyMap<string, KeptRecord> {
  const all = [...(current === undefined ? [] : [current]), ...versions];
  return new Map(all.map((record) => [keyOf(record), record]));
}
