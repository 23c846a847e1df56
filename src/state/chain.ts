import { signal } from '@preact/signals';
import { newSetup, readAgain } from '../entry/new-setup';
import { isUpright, type PairToRead, pairsToRead } from '../entry/pairs-to-read';
import type { PartEntry } from '../entry/part-entry';
import type { SetupEntry, SetupKind } from '../entry/setup-entry';
import { FORMAT, type InspectionRecord, type WorkRecord } from '../store/records';
import { loadChain } from '../store/shop-store';
import { keep } from './saving';
import { entryUnits, newId, now, shop, unread } from './shop';

/** One link of a part's chain. */
export type Link = InspectionRecord | WorkRecord;

/** What happened to the part that is open, oldest first; undefined until the database has answered. */
export const chain = signal<{ readonly part: string; readonly links: readonly Link[] } | undefined>(
  undefined,
);

/** Opens the chain of `part`, unless it is open already. */
export async function openChain(part: string): Promise<void> {
  if (chain.value?.part === part) return;
  chain.value = undefined;
  const loaded = await loadChain(part);
  if (loaded.damaged + loaded.newer > 0) {
    unread.value = { damaged: loaded.damaged, newer: loaded.newer };
  }
  chain.value = {
    part,
    links: [...loaded.records].sort((a, b) => a.made.localeCompare(b.made)),
  };
}

function putLinks(part: string, changed: readonly Link[]): void {
  keep(changed);
  const links = chain.value?.part === part ? chain.value.links : [];
  const byId = new Map(links.map((link) => [link.id, link]));
  for (const link of changed) byId.set(link.id, link);
  chain.value = { part, links: [...byId.values()] };
}

/** Begins a new inspection: with the setups of the last one, to be read again, where there was one. */
export function beginInspection(part: string, entry: PartEntry): InspectionRecord {
  const last = latestInspection(chain.value?.links ?? []);
  const again = (last?.setups ?? []).flatMap((setup) => readAgain(setup, newId) ?? []);
  const inspection: InspectionRecord = {
    ...{ format: FORMAT, made: now(), kind: 'inspection', id: newId(), part },
    setups: again.length > 0 ? again : firstSetups(entry),
  };
  putLinks(part, [inspection]);
  return inspection;
}

/** A nose comparator on each upright pair that the drawing asks about. */
function firstSetups(entry: PartEntry): readonly SetupEntry[] {
  return pairsToRead(entry)
    .filter(isUpright)
    .map(({ faces, base }) => newSetup('nose comparator', faces, base, entryUnits.value, newId));
}

export function latestInspection(links: readonly Link[]): InspectionRecord | undefined {
  return links.findLast((link): link is InspectionRecord => link.kind === 'inspection');
}

export function setSetups(inspection: InspectionRecord, setups: readonly SetupEntry[]): void {
  putLinks(inspection.part, [{ ...inspection, setups }]);
}

export function addSetup(
  inspection: InspectionRecord,
  kind: SetupKind,
  { faces, base }: PairToRead,
): void {
  const setup = newSetup(kind, faces, base, entryUnits.value, newId);
  setSetups(inspection, [...inspection.setups, setup]);
}

/** Finishes the readings: from now on they are worked out with the part and the kit as they are now. */
export function closeInspection(inspection: InspectionRecord, part: PartEntry): void {
  const closed = { at: now(), part, kit: shop.value.kit };
  putLinks(inspection.part, [{ ...inspection, closed }]);
}

/** Opens finished readings again, to put a slip right. */
export function reopenInspection(inspection: InspectionRecord): void {
  const { closed: _, ...open } = inspection;
  putLinks(inspection.part, [open]);
}

/** Begins to log work that follows `inspection`, which is finished by it, in one transaction. */
export function beginWork(
  inspection: InspectionRecord,
  part: PartEntry,
  advice: Pick<WorkRecord, 'requirement' | 'face' | 'advised'>,
): WorkRecord {
  const last = chain.value?.links.findLast((link): link is WorkRecord => link.kind === 'work');
  const work: WorkRecord = {
    ...{ format: FORMAT, made: now(), kind: 'work', id: newId(), part: inspection.part },
    ...advice,
    after: inspection.id,
    method: last?.method ?? 'lap',
    abrasive: last?.abrasive ?? '',
    amount: { text: '', unit: last?.amount.unit ?? 'seconds' },
    note: '',
  };
  const closed = inspection.closed ?? { at: now(), part, kit: shop.value.kit };
  putLinks(inspection.part, [{ ...inspection, closed }, work]);
  return work;
}

export function putWork(work: WorkRecord): void {
  putLinks(work.part, [work]);
}
