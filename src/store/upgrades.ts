import { FORMAT, type StoredRecord } from './records';

/** One step from a format to the next, on a record as it was read. */
export type UpgradeStep = (record: Record<string, unknown>) => Record<string, unknown>;

/** Steps by the format that they start from. Format 1 is the first there ever was. */
const STEPS: ReadonlyMap<number, UpgradeStep> = new Map();

const KINDS: readonly string[] = [
  'part',
  'inspection',
  'work',
  'shop',
] satisfies StoredRecord['kind'][];

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
  if (!isRecord(stored)) return { ok: false, reason: 'damaged' };
  let record = stored;
  for (let format = stored.format; format < current; format += 1) {
    const step = steps.get(format);
    if (step === undefined) return { ok: false, reason: 'damaged' };
    record = { ...step(record), format: format + 1 } as typeof stored;
  }
  if (record.format > current) return { ok: false, reason: 'newer' };
  return { ok: true, record: record as unknown as StoredRecord };
}

function isRecord(stored: unknown): stored is Record<string, unknown> & { format: number } {
  if (typeof stored !== 'object' || stored === null) return false;
  const { format, kind } = stored as Record<string, unknown>;
  return Number.isInteger(format) && (format as number) >= 1 && KINDS.includes(kind as string);
}
