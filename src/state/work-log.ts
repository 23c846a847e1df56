import type { Removal } from '../core/correction/removal';
import type { PartEntry } from '../entry/part-entry';
import type { InspectionRecord, WorkRecord } from '../store/records';
import { asItIs, chain, newLink, putLinks } from './chain';
import { finishedWith } from './inspections';
import { newId } from './shop';

/** Begins to log work on a face that follows `inspection`, which is finished by it, in one transaction. */
export function beginWork(
  inspection: InspectionRecord,
  part: PartEntry,
  { face, mean, slopes }: Removal,
): WorkRecord {
  const last = chain.value?.links.findLast((link): link is WorkRecord => link.kind === 'work');
  const work: WorkRecord = {
    ...newLink(inspection.part),
    ...{ kind: 'work', id: newId(), part: inspection.part },
    ...{ face, advised: { mean, slopes } },
    after: inspection.id,
    method: last?.method ?? 'lap',
    abrasive: last?.abrasive ?? '',
    amount: { text: '', unit: last?.amount.unit ?? 'seconds' },
    note: '',
  };
  const current = asItIs(inspection);
  const closed = current.closed ?? finishedWith(part, current.made);
  putLinks(current.part, [{ ...current, closed }, work]);
  return work;
}

export function putWork(work: WorkRecord): void {
  putLinks(work.part, [work]);
}

/** Changes a piece of work from what it is by now. */
export function changeWork(work: WorkRecord, change: (now: WorkRecord) => WorkRecord): void {
  putWork(change(asItIs(work)));
}
