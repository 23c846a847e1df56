import { signal } from '@preact/signals';
import { keyOf } from '../store/keys';
import type { SummaryRecord } from '../store/records';

/** Where the parts stand, by part, as far as it is known. */
export const summaries = signal<ReadonlyMap<string, SummaryRecord>>(new Map());

type Base = Pick<SummaryRecord, 'format' | 'made' | 'changed'>;

/**
 * What is to be kept along with a change of a part or its readings, in the same transaction: word
 * that where it stands, and what its inspections have found, has to be worked out again. Nothing where that word is given already, so that
 * a keystroke does not carry it each time.
 */
export function unsettled(part: string, base: Base): readonly SummaryRecord[] {
  const known = summaries.peek().get(part);
  if (known !== undefined && known.standing === undefined && known.found === undefined) return [];
  const summary: SummaryRecord = { ...base, kind: 'summary', part };
  showSummaries([summary]);
  return [summary];
}

export function showSummaries(changed: readonly SummaryRecord[]): void {
  if (changed.length === 0) return;
  const all = new Map(summaries.peek());
  for (const summary of changed) all.set(summary.part, summary);
  summaries.value = all;
}

/** What was worked out holds no more where another window has erased it. */
export function forgetSummaries(gone: ReadonlySet<string>): void {
  summaries.value = new Map(
    [...summaries.peek()].filter(([, summary]) => !gone.has(keyOf(summary))),
  );
}
