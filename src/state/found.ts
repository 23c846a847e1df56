import { signal } from '@preact/signals';
import { METHOD } from '../core/inspection/method';
import { type Found, keepFound, readFound, type ToKeep } from '../store/found';
import { keyOf } from '../store/keys';
import { tellOtherWindows } from '../store/other-windows';
import type { FoundMark, PartRecord } from '../store/records';
import { findAnew } from './find-anew';
import { kitMark } from './kit-mark';
import { untilSaved } from './saving';
import { parts } from './shop';
import { showSummaries, summaries } from './summaries';
import { turns } from './turns';

/*
 * What the inspections of every part have found of comparators and rates. It is kept beside each part
 * (`store/found.ts`) and worked out again, in idle time, where the part's chain, the method or the kit
 * has changed: the screens that tell of the whole shop read no chain.
 */

/** By part: what its inspections have found, as far as it is known. */
export const found = signal<ReadonlyMap<string, Found>>(new Map());

/** True once what is known of all parts has been gathered: before, that there is nothing is not sure. */
export const isGathered = signal(false);

/** Parts that are read, or kept, in one transaction. */
const AT_ONCE = 20;

/** ms after which what has been gathered so far is shown. */
const SHOWN_AFTER = 500;

/** Whether to go on. */
type IsWanted = () => boolean;

let last: Promise<void> = Promise.resolve();

/** One after the other: none that is wanted is left out because another is still at it. */
function inTurn(work: () => Promise<void>): Promise<void> {
  last = last.then(work).catch((error: unknown) => {
    // The screens then tell of fewer parts than there are.
    console.error(error);
  });
  return last;
}

/** Gathers what is known of every part, and works out what is not, until `isWanted` says no more. */
export function gatherFound(isWanted: IsWanted): Promise<void> {
  return inTurn(async () => {
    const all = new Map([...found.peek()].filter(([id, { at }]) => at === markOf(id)?.at));
    let shown = performance.now();
    const take = (some: readonly Found[]) => {
      for (const one of some) all.set(one.part, one);
      if (performance.now() - shown < SHOWN_AFTER) return;
      found.value = new Map(all);
      shown = performance.now();
    };
    const told = partsThatTell();
    await readKept(
      told.filter(({ id }) => !all.has(id) && markOf(id) !== undefined),
      take,
      isWanted,
    );
    await workOutAll(
      told.filter(({ id }) => !all.has(id)),
      take,
      isWanted,
    );
    found.value = all;
  }).then(() => {
    isGathered.value ||= isWanted();
  });
}

/** The same for those of which it is not known, without showing it: the list of parts has the time. */
export function settleFound(isWanted: IsWanted): Promise<void> {
  return inTurn(() => {
    const unsettled = partsThatTell().filter(({ id }) => markOf(id) === undefined);
    return workOutAll(unsettled, () => {}, isWanted);
  });
}

/** An invented part would teach the shop invented rates; one that was removed was a mistake or a trial. */
function partsThatTell(): readonly PartRecord[] {
  return [...parts.peek().values()].reverse().filter(({ example, removed }) => {
    return !example && removed === undefined;
  });
}

/** What says of the part that its finds hold; undefined where they do not. */
function markOf(id: string): FoundMark | undefined {
  const mark = summaries.peek().get(id)?.found;
  if (mark === undefined || mark.method !== METHOD) return undefined;
  return mark.kit === undefined || mark.kit === kitMark() ? mark : undefined;
}

async function readKept(
  kept: readonly PartRecord[],
  take: (some: readonly Found[]) => void,
  isWanted: IsWanted,
): Promise<void> {
  const turn = turns();
  for (let from = 0; from < kept.length && isWanted(); from += AT_ONCE) {
    const read = await readFound(kept.slice(from, from + AT_ONCE).map(({ id }) => id));
    take(read.filter(({ part, at }) => at === markOf(part)?.at));
    await turn();
  }
}

async function workOutAll(
  unknown: readonly PartRecord[],
  take: (some: readonly Found[]) => void,
  isWanted: IsWanted,
): Promise<void> {
  if (unknown.length === 0) return;
  await untilSaved();
  let toKeep: ToKeep[] = [];
  for (const part of unknown) {
    const one = await findAnew(part, isWanted);
    if (one !== undefined) {
      take([one.found]);
      toKeep.push(one);
    }
    if (!isWanted()) break;
    if (toKeep.length < AT_ONCE) continue;
    await keepAll(toKeep);
    toKeep = [];
  }
  await keepAll(toKeep);
}

async function keepAll(all: readonly ToKeep[]): Promise<void> {
  if (all.length === 0) return;
  const kept = await keepFound(all);
  const before = new Map(all.map(({ found, summary }) => [found.part, summary]));
  // What was changed while it was written is worked out again another time.
  showSummaries(kept.filter(({ part }) => summaries.peek().get(part) === before.get(part)));
  tellOtherWindows(kept.map(keyOf));
}
