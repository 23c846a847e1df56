import { allReadAgain } from '../entry/all-read-again';
import type { InspectionRecord, PartRecord } from '../store/records';
import { type Link, latestInspection } from './chain';
import { keep } from './saving';
import { newId, newRecord, parts } from './shop';

/**
 * A new part with the drawing of `part`, and its setups to be read anew where it has been read.
 * They are kept in one transaction.
 */
export function duplicate(part: PartRecord, links: readonly Link[]): PartRecord {
  const { entry } = parts.peek().get(part.id) ?? part;
  const ownId = <R extends { readonly id: string }>(one: R): R => ({ ...one, id: newId() });
  const requirements = entry.requirements.map(ownId);
  const flatness = entry.flatness && { flatness: entry.flatness.map(ownId) };
  const name = entry.name.trim() && `${entry.name.trim()}, copy`;
  const copy: PartRecord = {
    ...newRecord(),
    ...{ kind: 'part', id: newId(), example: false },
    entry: { ...entry, name, requirements, ...flatness },
  };
  const setups = allReadAgain(latestInspection(links)?.setups ?? [], newId);
  const inspection: InspectionRecord = {
    ...newRecord(),
    ...{ kind: 'inspection', id: newId(), part: copy.id, setups },
  };
  keep(setups.length > 0 ? [copy, inspection] : [copy]);
  parts.value = new Map(parts.value).set(copy.id, copy);
  return copy;
}
