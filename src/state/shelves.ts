import { signal } from '@preact/signals';
import type { PartRecord } from '../store/records';
import { now, partAsItIs, putPart } from './shop';

/** The part that was removed last, so that it can be put back at once. */
export const lastRemoved = signal<string | undefined>(undefined);

/** Puts a part away: it can still be found and taken out again. */
export function archive(part: PartRecord): void {
  putPart({ ...partAsItIs(part), archived: { at: now() } });
}

export function takeOutOfArchive(part: PartRecord): void {
  const { archived: _, ...rest } = partAsItIs(part);
  putPart(rest);
}

/** Takes a part off the list. Nothing of it is lost: it can be put back at any time. */
export function removePart(part: PartRecord): void {
  putPart({ ...partAsItIs(part), removed: { at: now() } });
  lastRemoved.value = part.id;
}

export function putBackPart(part: PartRecord): void {
  const { removed: _, ...rest } = partAsItIs(part);
  putPart(rest);
  if (lastRemoved.value === part.id) lastRemoved.value = undefined;
}
