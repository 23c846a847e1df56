import { signal } from '@preact/signals';
import { keyOf } from '../store/keys';
import type { InspectionRecord, VersionRecord } from '../store/records';
import { inOrderOf } from './oldest-first';
import { newRecord } from './shop';

/** The earlier states of what happened to the part that is open, oldest first. */
export const versions = signal<readonly VersionRecord[]>([]);

/** An earlier state of an inspection. */
export interface InspectionVersion extends VersionRecord {
  readonly record: InspectionRecord;
}

/** The states in which an inspection was finished before, oldest first. */
export function versionsOf(inspection: InspectionRecord): readonly InspectionVersion[] {
  const key = keyOf(inspection);
  return versions.value.filter(
    (version): version is InspectionVersion =>
      version.of === key && version.record.kind === 'inspection',
  );
}

/** The state of an inspection, to be kept in the transaction that puts another in its place. */
export function versionOf(record: InspectionRecord, why: string): VersionRecord {
  const { changed: id } = record;
  return { ...newRecord(), kind: 'version', of: keyOf(record), id, record, why };
}

/** In the order of the states themselves: when one was kept hangs on the clock of that day. */
export function showVersions(all: readonly VersionRecord[]): void {
  versions.value = inOrderOf(all, ({ id }) => id);
}
