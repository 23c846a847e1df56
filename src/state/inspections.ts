import { METHOD } from '../core/inspection/method';
import type { SaidFinding } from '../core/inspection/said';
import { allReadAgain } from '../entry/all-read-again';
import type { PartEntry } from '../entry/part-entry';
import type { SetupEntry } from '../entry/setup-entry';
import { waysToBegin } from '../entry/ways-to-begin';
import type { InspectionRecord, PartRecord } from '../store/records';
import { asItIs, chain, type Link, latestInspection, newLink, putLinks, showLinks } from './chain';
import { newSetupWithKit, withKitInUse } from './kit-in-use';
import { keep } from './saving';
import {
  changedNow,
  newId,
  newRecord,
  now,
  nowAfter,
  partAsItIs,
  parts,
  putPart,
  shop,
} from './shop';
import { unsettled } from './summaries';
import { showVersions, versionOf, versions } from './versions';

/** Begins a new inspection: with the setups of the last one, to be read again, where there was one. */
export function beginInspection(part: string, entry: PartEntry): InspectionRecord {
  const last = latestInspection(chain.value?.links ?? []);
  const since = chain.value?.links.at(-1);
  const worked = since?.kind === 'work' ? since.face : undefined;
  const again = allReadAgain(last?.setups ?? [], newId, worked).map(withKitInUse);
  const inspection: InspectionRecord = {
    ...newLink(part),
    ...{ kind: 'inspection', id: newId(), part },
    setups: again.length > 0 ? again : firstSetups(entry),
  };
  putLinks(part, [inspection]);
  return asItIs(inspection);
}

/** Adds an inspection of what was read elsewhere. */
export function addInspection(
  part: string,
  setups: readonly SetupEntry[],
  leftOut: NonNullable<InspectionRecord['leftOut']>,
): InspectionRecord {
  const inspection: InspectionRecord = {
    ...newLink(part),
    ...{ kind: 'inspection', id: newId(), part, setups },
    ...(Object.keys(leftOut).length > 0 && { leftOut }),
  };
  putLinks(part, [inspection]);
  return asItIs(inspection);
}

function firstSetups(entry: PartEntry): readonly SetupEntry[] {
  return waysToBegin(entry, shop.value.kit).map(({ kind, pair }) => newSetupWithKit(kind, pair));
}

/** Finishes the readings: from now on they are worked out with the part and the kit as they are now. */
export function closeInspection(inspection: InspectionRecord, part: PartEntry): void {
  putLinks(inspection.part, [
    { ...asItIs(inspection), closed: finishedWith(part, asItIs(inspection).made) },
  ]);
}

/**
 * Opens finished readings again, to put a slip right: what they were finished with is kept as an
 * earlier version, with `why`, in the same transaction.
 */
export function reopenInspection(inspection: InspectionRecord, why: string): void {
  const finished = asItIs(inspection);
  if (finished.closed === undefined) return;
  const { closed: _, ...rest } = finished;
  const version = versionOf(finished, why);
  const open = changedNow<InspectionRecord>(rest);
  keep([version, open, ...unsettled(open.part, newRecord())]);
  showVersions([...versions.value, version]);
  showLinks(open.part, [open]);
}

/** Closes the part: these readings are what it is let go with. They are finished by it, in one transaction. */
export function closePart(shown: PartRecord, inspection: InspectionRecord): void {
  const part = partAsItIs(shown);
  const current = asItIs(inspection);
  const finished = current.closed ?? finishedWith(part.entry, current.made);
  const closed: PartRecord = {
    ...part,
    closed: { at: now(), inspection: current.id, ...byWhom() },
  };
  putPartWith(closed, [{ ...current, closed: finished }]);
}

/** Takes a closed part up again. */
export function reopenPart(shown: PartRecord): void {
  const { closed: _, ...part } = partAsItIs(shown);
  putPart(part);
}

/** A part and links of its chain, kept all or none. */
function putPartWith(part: PartRecord, changed: readonly Link[]): void {
  const stamped = changedNow(part);
  const links = changed.map(changedNow);
  keep([stamped, ...links, ...unsettled(part.id, newRecord())]);
  parts.value = new Map(parts.value).set(part.id, stamped);
  showLinks(part.id, links);
}

/** What readings that were begun at `made` and are finished at this moment are worked out with, and by whom. */
export function finishedWith(
  part: PartEntry,
  made: string,
): NonNullable<InspectionRecord['closed']> {
  const { kit, level } = shop.value;
  return { at: nowAfter(made), part, kit, level, method: METHOD, ...byWhom() };
}

function byWhom(): { readonly who?: string } {
  const who = shop.value.who?.trim();
  return who ? { who } : {};
}

/** Keeps with finished readings what they say. */
export function putSaid(inspection: InspectionRecord, said: readonly SaidFinding[]): void {
  const current = asItIs(inspection);
  if (current.closed === undefined || current.closed.said !== undefined) return;
  putLinks(current.part, [{ ...current, closed: { ...current.closed, said } }]);
}
