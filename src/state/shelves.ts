import { signal } from '@preact/signals';
import { readAgain } from '../entry/new-setup';
import { erasePart } from '../store/erase';
import type { InspectionRecord, PartRecord } from '../store/records';
import { chain, type Link, latestInspection } from './chain';
import { keep, savingState } from './saving';
import { newId, newRecord, now, parts, putPart } from './shop';

/** The part that was removed last, so that it can be put back at once. */
export const lastRemoved = signal<string | undefined>(undefined);

/** The part as it is by now. */
function asItIs(part: PartRecord): PartRecord {
  return parts.peek().get(part.id) ?? part;
}

/** Puts a part away: it can still be found and taken out again. */
export function archive(part: PartRecord): void {
  putPart({ ...asItIs(part), archived: { at: now() } });
}

export function takeOutOfArchive(part: PartRecord): void {
  const { archived: _, ...rest } = asItIs(part);
  putPart(rest);
}

/** Takes a part off the list. Nothing of it is lost: it can be put back at any time. */
export function removePart(part: PartRecord): void {
  putPart({ ...asItIs(part), removed: { at: now() } });
  lastRemoved.value = part.id;
}

export function putBackPart(part: PartRecord): void {
  const { removed: _, ...rest } = asItIs(part);
  putPart(rest);
  if (lastRemoved.value === part.id) lastRemoved.value = undefined;
}

/**
 * A new part with the drawing of `part`, and its setups to be read anew where it has been read.
 * They are kept in one transaction.
 */
export function duplicate(part: PartRecord, links: readonly Link[]): PartRecord {
  const { entry } = asItIs(part);
  const requirements = entry.requirements.map((one) => ({ ...one, id: newId() }));
  const name = entry.name.trim() && `${entry.name.trim()}, copy`;
  const copy: PartRecord = {
    ...newRecord(),
    ...{ kind: 'part', id: newId(), example: false },
    entry: { ...entry, name, requirements },
  };
  const setups = (latestInspection(links)?.setups ?? []).flatMap(
    (setup) => readAgain(setup, newId) ?? [],
  );
  const inspection: InspectionRecord = {
    ...newRecord(),
    ...{ kind: 'inspection', id: newId(), part: copy.id, setups },
  };
  keep(setups.length > 0 ? [copy, inspection] : [copy]);
  parts.value = new Map(parts.value).set(copy.id, copy);
  return copy;
}

/**
 * Erases a removed part with all that happened to it, for good.
 *
 * @returns false where that was not possible: it is still there.
 */
export async function eraseForGood(part: PartRecord): Promise<boolean> {
  if (asItIs(part).removed === undefined || savingState.value !== 'saved') return false;
  try {
    await erasePart(part.id);
  } catch (error) {
    console.error(error);
    return false;
  }
  const rest = new Map(parts.value);
  rest.delete(part.id);
  parts.value = rest;
  if (chain.value?.part === part.id) chain.value = undefined;
  if (lastRemoved.value === part.id) lastRemoved.value = undefined;
  return true;
}
