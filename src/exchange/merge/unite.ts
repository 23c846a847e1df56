import { hashOfBytes } from '../../core/statistics/hash';
import { keyOf } from '../../store/keys';
import type { EnteredRecord, VersionRecord } from '../../store/records';
import { isSame } from '../../store/three-way';
import { canonical } from './canonical';

/** One record with its earlier states; there may be states of a record that is no longer there. */
export interface Lineage {
  readonly current?: EnteredRecord | undefined;
  readonly versions: readonly VersionRecord[];
}

/** Why a state was kept that another device had gone beyond. */
export const MERGED = 'Changed on two devices: the later state went on';

/**
 * Unites what two devices have of one record. Of two states the one that was changed later goes on
 * (of the same moment, the one whose canonical JSON is the greater); the other is kept as a version,
 * and so are all versions of both. What comes out hangs on nothing but the states that go in, so that
 * it is all one in which order, and how often, devices are merged.
 */
export function unite(one: Lineage, other: Lineage): Lineage {
  const states = [one.current, other.current].filter((state) => state !== undefined);
  const [current, ...beaten] = distinct(states).sort(laterFirst);
  const versions = [...one.versions, ...other.versions, ...beaten.map(asVersion)];
  return { ...(current && { current }), versions: inOrder(versions, current) };
}

/** Everything in it hangs on the state alone: also who merges it, and when, is all one. */
export function asVersion(record: EnteredRecord): VersionRecord {
  const { format, changed } = record;
  const times = { made: changed, changed };
  return { format, ...times, kind: 'version', of: keyOf(record), id: changed, record, why: MERGED };
}

/** Each version once, those of one moment told apart by a mark. */
function inOrder(
  versions: readonly VersionRecord[],
  current: EnteredRecord | undefined,
): readonly VersionRecord[] {
  if (versions.length === 0) return versions;
  const all = distinct(versions.map((version) => ({ ...version, id: version.record.changed })));
  // A state that was kept for another reason needs not be kept for this one too.
  const known = new Set(all.filter(({ why }) => why !== MERGED).map(stateOf));
  if (current !== undefined) known.add(canonical(current));
  const kept = all.filter((version) => version.why !== MERGED || !known.has(stateOf(version)));
  const moments = [...new Set(kept.map(({ id }) => id))].sort();
  return moments.flatMap((moment) =>
    kept
      .filter(({ id }) => id === moment)
      .sort(laterFirst)
      .map(marked),
  );
}

function stateOf({ record }: VersionRecord): string {
  return canonical(record);
}

function marked(version: VersionRecord, index: number): VersionRecord {
  if (index === 0) return version;
  const mark = hashOfBytes(new TextEncoder().encode(canonical(version)));
  return { ...version, id: `${version.id} ${mark.toString(16).padStart(8, '0')}` };
}

/** Most are one, or two that are the same: text is made of them only where it has to be. */
function distinct<T>(values: readonly T[]): T[] {
  const [first, second] = values;
  if (values.length < 2) return [...values];
  if (values.length === 2 && isSame(first, second)) return values.slice(1);
  return [...new Map(values.map((value) => [canonical(value), value])).values()];
}

function laterFirst(
  one: { readonly changed: string },
  other: { readonly changed: string },
): number {
  if (one.changed !== other.changed) return one.changed > other.changed ? -1 : 1;
  return canonical(one) > canonical(other) ? -1 : 1;
}
