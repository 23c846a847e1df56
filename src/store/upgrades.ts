import { type EnteredRecord, FORMAT, type StoredRecord, type VersionRecord } from './records';

/** One step from a format to the next, on a record as it was read. */
export type UpgradeStep = (record: Record<string, unknown>) => Record<string, unknown>;

/** Steps by the format that they start from. Format 1 is the first there ever was. */
const STEPS: ReadonlyMap<number, UpgradeStep> = new Map([
  // Format 1 did not say when a record was last changed.
  [1, (record) => ({ ...record, changed: record.made })],
]);

/** What every record of a kind has had since format 1: without it, nothing can be made of it. */
const NEEDED: Readonly<Record<StoredRecord['kind'], Readonly<Record<string, string>>>> = {
  part: { made: 'string', id: 'string', entry: 'object' },
  inspection: { made: 'string', id: 'string', part: 'string', setups: 'object' },
  work: { made: 'string', id: 'string', part: 'string', after: 'string', amount: 'object' },
  shop: { made: 'string', kit: 'object', units: 'object' },
  version: { made: 'string', of: 'string', id: 'string', record: 'object' },
  summary: { made: 'string', part: 'string' },
};

/** A stored value as a record of today's format, or why it cannot be. */
export type Upgraded =
  | { readonly ok: true; readonly record: StoredRecord }
  | { readonly ok: false; readonly reason: 'damaged' | 'newer' };

/**
 * Brings a stored value to `current` by numbered steps. What is from a newer version, or is no
 * record at all, is told apart and left untouched.
 */
export function upgrade(
  stored: unknown,
  steps: ReadonlyMap<number, UpgradeStep> = STEPS,
  current = FORMAT,
): Upgraded {
  if (!hasFormat(stored)) return { ok: false, reason: 'damaged' };
  if (stored.format > current) return { ok: false, reason: 'newer' };
  if (!hasWhatItNeeds(stored)) return { ok: false, reason: 'damaged' };
  let record: Record<string, unknown> = stored;
  for (let { format } = stored; format < current; format += 1) {
    const step = steps.get(format);
    if (step === undefined) return { ok: false, reason: 'damaged' };
    try {
      record = { ...step(record), format: format + 1 };
    } catch {
      // The step found less than its format promises.
      return { ok: false, reason: 'damaged' };
    }
  }
  const upgraded = record as unknown as StoredRecord;
  return upgraded.kind === 'version'
    ? withStateUpgraded(upgraded, steps, current)
    : { ok: true, record: upgraded };
}

/** The state that is kept is of the format of its day, and has a way of its own to go. */
function withStateUpgraded(
  version: VersionRecord,
  steps: ReadonlyMap<number, UpgradeStep>,
  current: number,
): Upgraded {
  const state = upgrade(version.record, steps, current);
  if (!state.ok) return state;
  return { ok: true, record: { ...version, record: state.record as EnteredRecord } };
}

function hasFormat(stored: unknown): stored is Record<string, unknown> & { format: number } {
  if (typeof stored !== 'object' || stored === null) return false;
  const { format, kind } = stored as Record<string, unknown>;
  return Number.isInteger(format) && (format as number) >= 1 && typeof kind === 'string';
}

function hasWhatItNeeds(stored: Record<string, unknown>): boolean {
  const { kind } = stored;
  if (!Object.hasOwn(NEEDED, kind as string)) return false;
  return Object.entries(NEEDED[kind as StoredRecord['kind']]).every(([name, type]) => {
    const value = stored[name];
    return value !== null && typeof value === type;
  });
}
